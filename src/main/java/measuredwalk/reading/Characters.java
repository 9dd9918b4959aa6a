package measuredwalk.reading;

import java.text.Normalizer;
import java.util.Locale;

/** What single characters mean in a message. */
final class Characters {

	private static final String APOSTROPHES = "'’‘ʼ′`´＇";

	private static final String DOUBLE_QUOTES = "\"“”„″＂";

	private static final String HYPHENS = "-‐‑‒–—−－";

	private Characters() {
	}

	static boolean isLineEnd(int code) {
		return code == '\n' || code == '\r' || code == 0x85 || code == 0x2028 || code == 0x2029;
	}

	/** Blanks, and characters that nobody sees. */
	static boolean isBlank(int code) {
		return code == ' ' || (!isLineEnd(code) && (Character.isWhitespace(code) || Character.isSpaceChar(code)
				|| Character.isISOControl(code) || Character.getType(code) == Character.FORMAT || isCombining(code)));
	}

	static boolean isFractionSign(int code) {
		return (code >= 0xBC && code <= 0xBE) || (code >= 0x2150 && code <= 0x215E);
	}

	static boolean isApostrophe(int code) {
		return APOSTROPHES.indexOf(code) >= 0;
	}

	/** A hyphen, a dash or a minus sign. */
	static boolean isHyphen(int code) {
		return HYPHENS.indexOf(code) >= 0;
	}

	static boolean isCombining(int code) {
		if (code < 0x300) {
			return false;
		}
		int type = Character.getType(code);
		return type == Character.NON_SPACING_MARK || type == Character.COMBINING_SPACING_MARK
				|| type == Character.ENCLOSING_MARK;
	}

	static boolean isSkinTone(int code) {
		return code >= 0x1F3FB && code <= 0x1F3FF;
	}

	static boolean isPunctuation(int code) {
		return switch (Character.getType(code)) {
			case Character.CONNECTOR_PUNCTUATION, Character.DASH_PUNCTUATION, Character.START_PUNCTUATION,
					Character.END_PUNCTUATION, Character.INITIAL_QUOTE_PUNCTUATION, Character.FINAL_QUOTE_PUNCTUATION,
					Character.OTHER_PUNCTUATION ->
				code != '%' && code != '&' && code != '@' && code != '#' && code != '*';
			default -> isApostrophe(code) || code == '−';
		};
	}

	/** The mark in its plain form: straight quotes, one kind of hyphen. */
	static String straight(int code) {
		if (isApostrophe(code)) {
			return "'";
		}
		if (DOUBLE_QUOTES.indexOf(code) >= 0) {
			return "\"";
		}
		if (isHyphen(code)) {
			return "-";
		}
		return code == 0x2044 ? "/" : Character.toString(code);
	}

	/** Figures of any script as ASCII digits. */
	static String figures(String text, int start, int end) {
		StringBuilder figures = new StringBuilder(end - start);
		for (int at = start; at < end; at += Character.charCount(text.codePointAt(at))) {
			int code = text.codePointAt(at);
			int digit = Character.digit(code, 10);
			figures.append(digit >= 0 ? (char) ('0' + digit) : code == '·' ? '.' : (char) code);
		}
		return figures.toString();
	}

	/** A word in lower case, with straight apostrophes and composed accents. */
	static String lowerCase(String text, int start, int end) {
		String word = text.substring(start, end);
		for (int at = 0; at < word.length(); at++) {
			if (word.charAt(at) > 0x7E) {
				return composed(word);
			}
		}
		return word.toLowerCase(Locale.ROOT);
	}

	private static String composed(String word) {
		String lower = Normalizer.normalize(word, Normalizer.Form.NFKC).toLowerCase(Locale.ROOT);
		StringBuilder straight = new StringBuilder(lower.length());
		lower.codePoints().forEach((code) -> straight.append(isApostrophe(code) ? "'" : Character.toString(code)));
		return straight.toString();
	}

}

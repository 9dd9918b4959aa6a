package measuredwalk.reading;

/** Finds the end of a sign that may be made of several characters, such as an emoji. */
final class SymbolScan {

	private static final int ZERO_WIDTH_JOINER = 0x200D;

	private SymbolScan() {
	}

	/**
	 * The end of the sign: skin tones, variants and what is joined to it belong to it.
	 * @param text the text
	 * @param start where it begins
	 * @return the offset behind it
	 */
	static int end(String text, int start) {
		int end = start + Character.charCount(text.codePointAt(start));
		while (end < text.length()) {
			int code = text.codePointAt(end);
			if (code == ZERO_WIDTH_JOINER && end + 1 < text.length()) {
				int joined = text.codePointAt(end + 1);
				end += 1 + (Character.isLetterOrDigit(joined) ? 0 : Character.charCount(joined));
			}
			else if (Characters.isCombining(code) || Characters.isSkinTone(code)) {
				end += Character.charCount(code);
			}
			else {
				break;
			}
		}
		return end;
	}

}

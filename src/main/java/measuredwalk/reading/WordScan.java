package measuredwalk.reading;

/** Finds the end of a word. */
final class WordScan {

	private WordScan() {
	}

	/**
	 * The end of the word that begins with a letter.
	 * @param text the text
	 * @param start where its first letter is
	 * @param afterFigures whether it is joined to figures before, as the h of '1h05'
	 * @return the offset behind it
	 */
	static int end(String text, int start, boolean afterFigures) {
		int end = lettersEnd(text, start);
		if (!afterFigures && end - start == 1 && !isTimes(text.charAt(start)) && isDigit(text, end)) {
			return alphanumericEnd(text, end);
		}
		return end;
	}

	/** Whether the hyphen at that place only joins two parts of one compound. */
	static boolean insideCompound(String text, int hyphen) {
		if (hyphen == 0 || hyphen + 1 >= text.length()) {
			return false;
		}
		int before = text.codePointBefore(hyphen);
		int after = text.codePointAt(hyphen + 1);
		return Character.isLetter(after) && (Character.isLetterOrDigit(before) || Characters.isFractionSign(before));
	}

	private static int lettersEnd(String text, int start) {
		int end = start;
		while (end < text.length()) {
			int code = text.codePointAt(end);
			boolean goesOn = isWordPart(code) || isInnerApostrophe(text, end);
			if (!goesOn) {
				break;
			}
			end += Character.charCount(code);
		}
		return end;
	}

	private static boolean isWordPart(int code) {
		return Character.isLetter(code) || Characters.isCombining(code);
	}

	/** The apostrophe of "didn't", but not the one of "five'ish". */
	private static boolean isInnerApostrophe(String text, int at) {
		return Characters.isApostrophe(text.charAt(at)) && at + 1 < text.length()
				&& Character.isLetter(text.charAt(at + 1)) && !text.regionMatches(true, at + 1, "ish", 0, 3);
	}

	private static int alphanumericEnd(String text, int start) {
		int end = start;
		while (end < text.length() && Character.isLetterOrDigit(text.codePointAt(end))) {
			end += Character.charCount(text.codePointAt(end));
		}
		return end;
	}

	private static boolean isDigit(String text, int at) {
		return at < text.length() && Character.isDigit(text.codePointAt(at));
	}

	private static boolean isTimes(char letter) {
		return letter == 'x' || letter == 'X';
	}

}

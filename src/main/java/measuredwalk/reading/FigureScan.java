package measuredwalk.reading;

/** Finds the end of a number in figures: 25, 7.10, 7:10, 23:59:28, 1,200, 1,200.50. */
final class FigureScan {

	private FigureScan() {
	}

	/**
	 * The end of the number that begins with a digit. A number has at most one decimal
	 * point (192.168.1.2 is four numbers), colons only between groups of two figures, and
	 * commas only before groups of three.
	 * @param text the text
	 * @param start where its first digit is
	 * @return the offset behind it
	 */
	static int end(String text, int start) {
		if (text.charAt(start) == '.') {
			return digitsEnd(text, start + 1);
		}
		int end = digitsEnd(text, start);
		char mark = end < text.length() ? text.charAt(end) : ' ';
		return switch (mark) {
			case ':' -> clockEnd(text, start, end);
			case ',' -> decimalEnd(text, groupsEnd(text, start, end));
			default -> isBehindPoint(text, start) ? end : decimalEnd(text, end);
		};
	}

	/** Whether a decimal begins there with its point: '.5'. */
	static boolean isLeadingPoint(String text, int at) {
		boolean point = text.charAt(at) == '.' && at + 1 < text.length() && Character.isDigit(text.charAt(at + 1));
		return point
				&& (at == 0 || Characters.isBlank(text.charAt(at - 1)) || Characters.isLineEnd(text.charAt(at - 1)));
	}

	/** The last two of 192.168.1.2 are no decimal either. */
	private static boolean isBehindPoint(String text, int start) {
		return start >= 2 && text.charAt(start - 1) == '.' && Character.isDigit(text.charAt(start - 2));
	}

	private static int digitsEnd(String text, int start) {
		int end = start;
		while (end < text.length() && Character.isDigit(text.codePointAt(end))) {
			end += Character.charCount(text.codePointAt(end));
		}
		return end;
	}

	private static int clockEnd(String text, int start, int hoursEnd) {
		int minutesEnd = digitsEnd(text, hoursEnd + 1);
		if (hoursEnd - start > 2 || minutesEnd - hoursEnd != 3) {
			return hoursEnd;
		}
		boolean seconds = minutesEnd < text.length() && text.charAt(minutesEnd) == ':'
				&& digitsEnd(text, minutesEnd + 1) - minutesEnd == 3;
		return seconds ? minutesEnd + 3 : minutesEnd;
	}

	private static int groupsEnd(String text, int start, int firstEnd) {
		int end = firstEnd;
		if (end - start > 3) {
			return end;
		}
		while (end < text.length() && text.charAt(end) == ',' && digitsEnd(text, end + 1) - end == 4) {
			end += 4;
		}
		return end < text.length() && text.charAt(end) == ',' && digitsEnd(text, end + 1) > end + 1 ? firstEnd : end;
	}

	private static int decimalEnd(String text, int wholeEnd) {
		int end = pointEnd(text, wholeEnd);
		return end > wholeEnd && pointEnd(text, end) > end ? wholeEnd : end;
	}

	private static int pointEnd(String text, int end) {
		if (end < text.length() && (text.charAt(end) == '.' || text.charAt(end) == '·')) {
			int decimals = digitsEnd(text, end + 1);
			return decimals > end + 1 ? decimals : end;
		}
		return end;
	}

}

package measuredwalk.reading.words;

/** Which letters lie side by side on a phone's keyboard. */
final class Keyboard {

	private static final String[] ROWS = { "qwertyuiop", "asdfghjkl", "zxcvbnm" };

	private static final boolean[][] NEIGHBOURS = neighbours();

	private Keyboard() {
	}

	/**
	 * Whether a thumb that aims at one letter may hit the other.
	 * @param one a letter
	 * @param other another letter
	 * @return true when they lie side by side
	 */
	static boolean areNeighbours(char one, char other) {
		return isLetter(one) && isLetter(other) && NEIGHBOURS[one - 'a'][other - 'a'];
	}

	private static boolean isLetter(char letter) {
		return letter >= 'a' && letter <= 'z';
	}

	private static boolean[][] neighbours() {
		boolean[][] near = new boolean[26][26];
		for (int row = 0; row < ROWS.length; row++) {
			for (int column = 0; column < ROWS[row].length(); column++) {
				mark(near, ROWS[row].charAt(column), row, column + 1);
				mark(near, ROWS[row].charAt(column), row + 1, column);
				mark(near, ROWS[row].charAt(column), row + 1, column - 1);
			}
		}
		return near;
	}

	private static void mark(boolean[][] near, char letter, int row, int column) {
		if (row < ROWS.length && column >= 0 && column < ROWS[row].length()) {
			char other = ROWS[row].charAt(column);
			near[letter - 'a'][other - 'a'] = true;
			near[other - 'a'][letter - 'a'] = true;
		}
	}

}

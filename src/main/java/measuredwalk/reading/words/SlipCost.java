package measuredwalk.reading.words;

/**
 * How unlikely it is that one word was typed for another: an edit distance (optimal
 * string alignment: Damerau 1964) in which the usual slips of a thumb cost less than
 * others.
 */
final class SlipCost {

	private static final double OTHER = 1.0;

	private static final double SWAP = 0.5;

	private static final double NEIGHBOUR = 0.6;

	private static final double VOWEL = 0.6;

	private static final double DOUBLED = 0.5;

	/** A wrong first letter is rare. */
	private static final double FIRST = 0.4;

	private static final String VOWELS = "aeiouy";

	private SlipCost() {
	}

	/**
	 * The cost of typing one word for another.
	 * @param typed what was typed
	 * @param meant what may have been meant
	 * @param most what it may cost; where it must be more the exact cost is not worked
	 * out
	 * @return 0 for the same word, about 1 for each unusual slip; some number above the
	 * most when it must be more
	 */
	static double of(String typed, String meant, double most) {
		double first = (typed.charAt(0) == meant.charAt(0)) ? 0 : FIRST;
		if (first > most) {
			return first;
		}
		double[][] cost = new double[typed.length() + 1][meant.length() + 1];
		for (int row = 1; row <= typed.length(); row++) {
			cost[row][0] = row;
		}
		for (int column = 1; column <= meant.length(); column++) {
			cost[0][column] = column;
		}
		double leastBefore = 0;
		for (int row = 1; row <= typed.length(); row++) {
			double least = cost[row][0];
			for (int column = 1; column <= meant.length(); column++) {
				cost[row][column] = cheapest(cost, typed, meant, row, column);
				least = Math.min(least, cost[row][column]);
			}
			// A swap reaches back two rows, so both must be above the most.
			if (Math.min(least, leastBefore) + first > most) {
				return Double.MAX_VALUE;
			}
			leastBefore = least;
		}
		return cost[typed.length()][meant.length()] + first;
	}

	private static double cheapest(double[][] cost, String typed, String meant, int row, int column) {
		char left = typed.charAt(row - 1);
		char right = meant.charAt(column - 1);
		double best = cost[row - 1][column - 1] + ((left == right) ? 0 : substitution(left, right));
		best = Math.min(best, cost[row - 1][column] + extra(typed, row - 1));
		best = Math.min(best, cost[row][column - 1] + extra(meant, column - 1));
		if (row > 1 && column > 1 && left == meant.charAt(column - 2) && typed.charAt(row - 2) == right) {
			best = Math.min(best, cost[row - 2][column - 2] + ((left == right) ? 0 : SWAP));
		}
		return best;
	}

	private static double substitution(char left, char right) {
		if (VOWELS.indexOf(left) >= 0 && VOWELS.indexOf(right) >= 0) {
			return VOWEL;
		}
		return Keyboard.areNeighbours(left, right) ? NEIGHBOUR : OTHER;
	}

	private static double extra(String word, int at) {
		boolean doubled = (at > 0 && word.charAt(at) == word.charAt(at - 1))
				|| (at + 1 < word.length() && word.charAt(at) == word.charAt(at + 1));
		return doubled ? DOUBLED : (VOWELS.indexOf(word.charAt(at)) >= 0) ? 0.8 : OTHER;
	}

}

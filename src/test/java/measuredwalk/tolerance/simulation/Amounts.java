package measuredwalk.tolerance.simulation;

/** How minutes are told, and misread. */
final class Amounts {

	private static final double LONGEST_TOLD = 180;

	private Amounts() {
	}

	/**
	 * Minutes as they reach the journal.
	 * @param minutes what it was
	 * @param misread chance that it is wrong by far
	 * @param luck luck of the telling
	 * @return what was told, from 1 to 180
	 */
	static double told(double minutes, double misread, Luck luck) {
		double said = rounded(minutes * Math.exp(0.05 * luck.gaussian()), luck);
		boolean wrong = luck.happens(misread);
		boolean byFactor = luck.happens(0.5);
		boolean more = luck.happens(0.5);
		double wrongly = byFactor ? said * (more ? 2 : 0.5) : soundAlike(said);
		return Math.max(1, Math.min(LONGEST_TOLD, Math.rint(wrong ? wrongly : said)));
	}

	/** People tell fives from ten minutes on, mostly (common practice, no source). */
	static double rounded(double minutes, Luck luck) {
		boolean fives = luck.happens(0.6) && minutes >= 10;
		return Math.max(1, fives ? 5 * Math.rint(minutes / 5) : Math.rint(minutes));
	}

	/**
	 * Fifteen and fifty, thirteen and thirty: teens for tens and tens for teens; others
	 * slip a digit's place to the half.
	 */
	private static double soundAlike(double minutes) {
		if (minutes >= 13 && minutes <= 19) {
			return 10 * (minutes - 10);
		}
		if (minutes >= 30 && minutes <= 90) {
			return 10 + Math.rint(minutes / 10);
		}
		return minutes * 2;
	}

}

package measuredwalk.tolerance;

/**
 * Seven days together at most so much more than seven days before. It is measured on what
 * was suggested, so that a longer walk than suggested does not shorten the next, and
 * against the best week of the last four, so that the way back from rest is not growth.
 */
record WeeklyTotal(LimitSettings settings) implements Limit {

	private static final int WEEK = 7;

	private static final int WEEKS = 4;

	@Override
	public double most(Situation situation) {
		return (mostOfWeek(situation) - total(situation, 1, WEEK - 1)) / situation.plan().walksPerDay();
	}

	/** The most minutes of seven days together. */
	double mostOfWeek(Situation situation) {
		double best = 0;
		for (int week = 1; week <= WEEKS; week++) {
			best = Math.max(best, total(situation, week * WEEK, WEEK));
		}
		return this.settings.weekly() * best;
	}

	private static double total(Situation situation, int from, int days) {
		double total = 0;
		for (int ago = from; ago < from + days; ago++) {
			PastDay day = situation.day(ago);
			total += (day != null) ? day.suggestedTotal()
					: situation.plan().planMinutes() * situation.plan().walksPerDay();
		}
		return total;
	}

	@Override
	public Reason reason() {
		return Reason.WEEKLY_TOTAL;
	}

}

package measuredwalk.surveillance;

/**
 * An upper cumulative-sum chart (Page 1954, Biometrika 41:100): it adds what each score
 * is above a reference, never goes under 0, and alarms at a limit.
 *
 * @param reference what a score must pass to raise the sum
 * @param limit the sum at and above which it alarms, above 0
 */
public record Cusum(double reference, double limit) {

	public Cusum {
		if (!(limit > 0)) {
			throw new IllegalArgumentException("the limit must be above 0, not " + limit);
		}
	}

	/**
	 * Takes in one score.
	 * @param sum the sum before; 0 at the start, or more for a head start (Lucas and
	 * Crosier 1982, Technometrics 24:199)
	 * @param score the score
	 * @return the sum after, at least 0
	 */
	public double next(double sum, double score) {
		return Math.max(0, sum + score - this.reference);
	}

	/**
	 * Whether a sum is an alarm.
	 * @param sum the sum
	 * @return true at the limit and above
	 */
	public boolean alarms(double sum) {
		return sum >= this.limit;
	}

}

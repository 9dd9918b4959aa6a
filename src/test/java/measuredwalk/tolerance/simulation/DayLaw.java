package measuredwalk.tolerance.simulation;

/**
 * The part of today's tolerance that nobody can know in the morning, in logs. Part of it
 * stays on as the quality of the following days, part is gone tomorrow.
 */
sealed interface DayLaw permits LogNormalDay, HeavyTailedDay {

	/** What is new in the quality of the day and lasts by the dog's day memory. */
	double innovation(Luck luck);

	/** What is gone tomorrow. */
	double passing(Luck luck);

	/**
	 * A quantile of the sum of both.
	 * @param p chance of being below, in (0, 1)
	 * @return the log shift
	 */
	double quantile(double p);

}

package measuredwalk.tolerance.simulation;

/** What only the oracle may look at. */
interface Insight {

	/**
	 * The best safe dose: the most minutes of each of some equal walks for which the
	 * chance, over today's luck alone, that any of them passes the tolerance is at most
	 * {@link #ALPHA}, within the clinic's limits.
	 * @param walks number of walks
	 * @return minutes of each
	 */
	double bestSafeMinutes(int walks);

	/** The chance of trouble that the tolerance notes take as default. */
	double ALPHA = 0.15;

}

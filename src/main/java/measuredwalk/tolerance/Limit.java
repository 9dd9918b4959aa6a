package measuredwalk.tolerance;

/** A clinical rule that allows no more than so many minutes for each walk. */
interface Limit {

	/** No limit at all. */
	double NONE = Double.POSITIVE_INFINITY;

	/**
	 * The most that the rule allows.
	 * @param situation the situation
	 * @return minutes for each walk, or {@link #NONE}
	 */
	double most(Situation situation);

	/** The name of the rule, told when it binds. */
	Reason reason();

}

package measuredwalk.household;

/** What came of a join code. */
public enum JoinOutcome {

	/** The chat belongs to the household now. */
	JOINED,
	/** The chat belonged to it already; messages are on again. */
	BACK_AGAIN,
	/** There is no such code, or it was used already. */
	UNKNOWN_CODE,
	/** The code was good, but not any more. */
	EXPIRED_CODE

}

package measuredwalk.reading;

import measuredwalk.signs.Coded;

/** How soon somebody must act on a message, from the least to the most. */
public enum Level implements Coded {

	/** Nothing above the dog's own usual. */
	NONE,
	/** Something above the dog's own usual. */
	WATCH,
	/** The clinic should be called the same day. */
	SAME_DAY,
	/** The clinic should be called now. */
	EMERGENCY

}

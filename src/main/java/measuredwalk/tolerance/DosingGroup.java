package measuredwalk.tolerance;

import measuredwalk.signs.Coded;

/** What the numbers of the dosing rule are about. */
public enum DosingGroup implements Coded {

	/** How much chance of trouble is allowed. */
	DOSING_RULE,

	/** The clinical limits on top of that. */
	LIMITS,

	/** What makes a minute count for more. */
	LOAD_FACTORS

}

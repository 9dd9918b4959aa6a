package measuredwalk.escalation;

import measuredwalk.signs.Coded;

/** How soon the clinic must look at an alert, from the least to the most. */
public enum AlertLevel implements Coded {

	/** Within 24 to 48 hours. */
	REVIEW,
	/** The same day. */
	SAME_DAY,
	/** Now. */
	EMERGENCY

}

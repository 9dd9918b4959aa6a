package measuredwalk.tolerance;

import measuredwalk.signs.Coded;

/** What kind of day to make of it. */
public enum Advice implements Coded {

	USUAL, EASE_OFF, REST, CALL_CLINIC, EMERGENCY

}

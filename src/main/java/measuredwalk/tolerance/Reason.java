package measuredwalk.tolerance;

import measuredwalk.signs.Coded;

/** Why a suggestion is what it is. */
public enum Reason implements Coded {

	/** Nothing is known yet but the clinic's plan. */
	STARTING_FROM_THE_PLAN

}

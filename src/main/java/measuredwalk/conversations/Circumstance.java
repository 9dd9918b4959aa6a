package measuredwalk.conversations;

import measuredwalk.signs.Coded;

/** What must hold for a step to be worth asking. */
public enum Circumstance implements Coded {

	/** A sign was seen on the walk and nobody said yet when it began. */
	SIGN_WITHOUT_ONSET,
	/** The dog was stiff and nobody said yet for how long. */
	STIFF_WITHOUT_MINUTES

}

package measuredwalk.conversations;

import measuredwalk.signs.Coded;

/** Something that a conversation wants to know. */
public enum Slot implements Coded {

	/** How long or how far the walk was, or that there was none. */
	WALK_AMOUNT,
	/** Signs during the walk, or that there were none. */
	SIGNS,
	/** When in the walk the first sign was seen. */
	ONSET,
	/** How the dog is on the whole. */
	OVERALL,
	/** Whether the dog was stiff. */
	STIFFNESS,
	/** How long stiffness took to ease. */
	STIFF_MINUTES,
	/** What the dog is called. */
	DOG_NAME,
	/** How many minutes it walks as a rule. */
	USUAL_MINUTES,
	/** What the dog weighs. */
	WEIGHT,
	/** Whether its muscles look as they did. */
	MUSCLE,
	/** What has changed in what it gets. */
	MEDICINES,
	/** What it enjoys. */
	ENJOYMENT

}

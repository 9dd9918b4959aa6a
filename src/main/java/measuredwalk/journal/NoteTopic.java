package measuredwalk.journal;

import measuredwalk.signs.Coded;

/** What a note is about. */
public enum NoteTopic implements Coded {

	/** What the dog weighs. */
	WEIGHT,
	/** How its muscles look. */
	MUSCLE,
	/** What changed in what it gets. */
	MEDICINES,
	/** What it enjoys. */
	ENJOYMENT,
	/** There is no walk that day. */
	NO_WALK

}

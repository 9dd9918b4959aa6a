package measuredwalk.reading;

import measuredwalk.signs.Coded;

/** What the message answers. */
public enum Question implements Coded {

	/** How did the walk go? */
	WALK,
	/** How is the dog this morning? */
	MORNING,
	/** Nothing was asked: a remark out of the blue. */
	ANY

}

package measuredwalk.reading.amount;

/** What part a number plays in a message. */
enum Role {

	/** How long or how far the walk was. */
	WALK,
	/** The whole, where parts were told before: '25 all in'. */
	TOTAL,
	/** What parts come to in the same sentence: '15 each way so 30'. */
	RESULT,
	/** What is taken off: 'an hour less ten'. */
	MINUS,
	/** How far the length may be off: 'an hour, give or take ten minutes'. */
	SPREAD,
	/** When a sign was first seen, counted from the start of the walk. */
	ONSET,
	/** So long before the end of the walk: 'the last five minutes'. */
	FROM_END,
	/** So much longer or shorter than another walk. */
	OFFSET,
	/** How long morning stiffness took to ease. */
	STIFFNESS,
	/** What was told wrong: the 50 of '15 not 50'. */
	WRONG,
	/** Anything else: a plan, a nap, an age, another dog's walk. */
	NONE

}

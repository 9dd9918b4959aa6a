package measuredwalk.reading.quantity;

/** The task of a word that is no number and no unit. */
enum Cue {

	/** May stand between a number and its unit: 'a good hour', 'two more minutes'. */
	FILLER,
	/** Joins the parts of an amount. */
	AND,
	/** Joins the ends of a range. */
	RANGE,
	/** Multiplies: '2 x 10'. */
	TIMES,
	/** Stands before a time of day. */
	LEAD,
	/** Stands before a time of day even when that is a plain number: 'at 7'. */
	AT,
	/** Tells of setting off. */
	LEAVE,
	/** Tells of coming home. */
	RETURN,
	/** Makes what follows approximate. */
	APPROXIMATE,
	/** Whose age may follow. */
	PRONOUN,
	/** Several of the same amount: 'two lots of'. */
	LUMP,
	/** A walk, told of as a thing: 'two ten minute strolls'. */
	WALK,
	/** Before 'one' it makes a pronoun of it: 'that one'. */
	DETERMINER,
	/** Before 'one' and a number it makes a pronoun of it: 'the second one fifteen'. */
	POINTING,
	/** A month; its number is the value of the word. */
	MONTH

}

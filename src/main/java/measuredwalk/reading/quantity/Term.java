package measuredwalk.reading.quantity;

import org.jspecify.annotations.Nullable;

/**
 * What a word may mean in a quantity.
 *
 * @param numeral its part in a number
 * @param value the value of that part, or the parts that a whole is cut into
 * @param unit the unit that it names
 * @param cues its tasks, one bit for each
 * @param month from 1 to 12 for a month, else 0
 */
record Term(Numeral numeral, double value, @Nullable Unit unit, int cues, int month) {

	static final Term NONE = new Term(Numeral.NONE, 0, null, 0, 0);

	/** Tasks of words that stand inside a quantity or beside one, but never begin it. */
	private static final int INNER = bits(Cue.AND, Cue.RANGE, Cue.PRONOUN, Cue.LUMP, Cue.WALK, Cue.LEAVE, Cue.RETURN,
			Cue.TIMES, Cue.LEAD);

	/** Whether it may be any part of a quantity. */
	boolean isKnown() {
		return this.numeral != Numeral.NONE || this.unit != null || this.cues != 0;
	}

	/** Whether a quantity may begin with it, by what it means alone. */
	boolean mayStart() {
		return this.numeral != Numeral.NONE || this.unit != null || (this.cues & ~INNER) != 0;
	}

	boolean has(Cue cue) {
		return (this.cues & bit(cue)) != 0;
	}

	Term withNumeral(Numeral newNumeral, double newValue) {
		return new Term(newNumeral, newValue, this.unit, this.cues, this.month);
	}

	Term withUnit(Unit newUnit) {
		return new Term(this.numeral, this.value, newUnit, this.cues, this.month);
	}

	Term withCue(Cue cue, int newMonth) {
		return new Term(this.numeral, this.value, this.unit, this.cues | bit(cue), Math.max(this.month, newMonth));
	}

	private static int bits(Cue... cues) {
		int bits = 0;
		for (Cue cue : cues) {
			bits |= bit(cue);
		}
		return bits;
	}

	private static int bit(Cue cue) {
		return 1 << cue.ordinal();
	}

}

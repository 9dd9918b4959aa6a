package measuredwalk.reading.gloss;

/**
 * A word, number or mark of a message that is being glossed.
 *
 * @param typed in lower case, as typed
 * @param plain without accents
 * @param text what stands there when no phrase covers it
 * @param kind what it is
 */
record Word(String typed, String plain, String text, Kind kind) {

	/** What it is. */
	enum Kind {

		/** A word of the language, or perhaps of English. */
		WORD,
		/** A number in figures. */
		NUMBER,
		/** The dog's name, or what else is kept as it stands. */
		NAME,
		/** A mark, at which phrases end. */
		MARK

	}

	boolean isMark() {
		return this.kind == Kind.MARK;
	}

}

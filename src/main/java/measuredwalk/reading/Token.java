package measuredwalk.reading;

/**
 * A word, number or mark of a message.
 *
 * @param word the normalised form: lower case, straight quotes, ASCII digits; what the
 * rules look at
 * @param start offset of its first character in the original text
 * @param end offset behind its last character in the original text
 * @param kind what it is
 * @param joined true when nothing stands between it and the token before, or only the
 * hyphen of a compound such as 'twenty-five'
 */
public record Token(String word, int start, int end, Kind kind, boolean joined) {

	/** What a token is. */
	public enum Kind {

		/** Letters, with the apostrophes inside: 'limping', "didn't". */
		WORD,
		/** A number in figures: '25', '7.10', '7:10', '1,200', '½'. */
		NUMBER,
		/** A mark such as a comma, a full stop, a slash, a hyphen or a quote. */
		PUNCTUATION,
		/** Any other sign, one for a whole emoji: '£', '+', '°', '🐾'. */
		SYMBOL,
		/** One or more line ends. */
		BREAK

	}

	/**
	 * The same place of the text with another word, as spelling repair needs it.
	 * @param repaired the repaired word, in lower case
	 * @return the token with that word
	 */
	public Token withWord(String repaired) {
		return new Token(repaired, this.start, this.end, this.kind, this.joined);
	}

	/**
	 * Whether this is that word or mark.
	 * @param other a word in lower case
	 * @return true when it is
	 */
	public boolean is(String other) {
		return this.word.equals(other);
	}

}

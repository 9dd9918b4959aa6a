package measuredwalk.reading.quantity;

/**
 * A number that was read from words or figures.
 *
 * @param value its value
 * @param end index behind its last token
 * @param style how it is written
 * @param approximate true for 'a few', '2 and a bit'
 */
record NumberPhrase(double value, int end, Style style, boolean approximate) {

	enum Style {

		/** 25. */
		FIGURES,
		/** twenty-five. */
		WORDS,
		/** 'an' in 'an hour': no number unless a unit follows. */
		ARTICLE,
		/** half, two thirds, 3/4. */
		FRACTION,
		/** a couple, a few, a dozen. */
		VAGUE

	}

	boolean isArticle() {
		return this.style == Style.ARTICLE;
	}

	boolean isWhole() {
		return this.value == Math.rint(this.value);
	}

	NumberPhrase plus(double more, int newEnd) {
		return new NumberPhrase(this.value + more, newEnd, this.style, this.approximate);
	}

	NumberPhrase times(double factor, int newEnd) {
		return new NumberPhrase(this.value * factor, newEnd, this.style, this.approximate);
	}

	NumberPhrase negated() {
		return new NumberPhrase(-this.value, this.end, this.style, this.approximate);
	}

	NumberPhrase roughlyTo(int newEnd) {
		return new NumberPhrase(this.value, newEnd, this.style, true);
	}

}

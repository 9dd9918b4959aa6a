package measuredwalk.reading.quantity;

/** What part of a number in words a word is. */
enum Numeral {

	NONE, ZERO, DIGIT, TEEN, TENS, HUNDRED, SCALE, DOZEN, ARTICLE, VAGUE, PART, ORDINAL, FIGURES;

	/** Whether a number in words may begin with it or be made of it. */
	boolean isCardinal() {
		return switch (this) {
			case ZERO, DIGIT, TEEN, TENS, HUNDRED, SCALE, FIGURES -> true;
			default -> false;
		};
	}

}

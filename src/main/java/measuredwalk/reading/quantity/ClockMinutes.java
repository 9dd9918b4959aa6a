package measuredwalk.reading.quantity;

/** Reads the minutes behind an hour in words: 'eight forty', 'nine oh five'. */
final class ClockMinutes {

	private ClockMinutes() {
	}

	/** Index behind the minutes, or the index itself when there are none. */
	static int end(Terms terms, int at) {
		Numeral numeral = terms.numeral(at);
		return switch (numeral) {
			case TENS -> value(terms, at) > 59 ? at : terms.numeral(at + 1) == Numeral.DIGIT ? at + 2 : at + 1;
			case TEEN -> at + 1;
			case DIGIT -> terms.is(at, "five") ? at + 1 : at;
			case ZERO -> terms.numeral(at + 1) == Numeral.DIGIT ? at + 2 : at;
			default -> at;
		};
	}

	/** The minutes that begin there. */
	static int value(Terms terms, int at) {
		double value = terms.term(at).value();
		boolean digit = terms.numeral(at + 1) == Numeral.DIGIT
				&& (terms.numeral(at) == Numeral.TENS || terms.numeral(at) == Numeral.ZERO);
		return (int) (digit ? value + terms.term(at + 1).value() : value);
	}

}

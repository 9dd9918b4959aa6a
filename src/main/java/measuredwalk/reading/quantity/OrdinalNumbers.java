package measuredwalk.reading.quantity;

/** Reads places in a row: 'third', 'twenty-first', '3rd'. */
final class OrdinalNumbers {

	private OrdinalNumbers() {
	}

	/** Index behind the ordinal that begins there, or the index itself. */
	static int end(Terms terms, int at) {
		if (terms.numeral(at) == Numeral.ORDINAL) {
			return at + 1;
		}
		boolean tens = terms.numeral(at) == Numeral.TENS && terms.numeral(at + 1) == Numeral.ORDINAL
				&& terms.term(at + 1).value() < 10;
		boolean figures = terms.isFigures(at) && terms.glued(at + 1) && isEnding(terms.word(at + 1))
				&& Figures.isWholeFigures(terms.word(at));
		return tens || figures ? at + 2 : at;
	}

	/** The place that is told there. */
	static double value(Terms terms, int at) {
		if (terms.isFigures(at)) {
			return Figures.value(terms.word(at));
		}
		double value = terms.term(at).value();
		return terms.numeral(at) == Numeral.TENS ? value + terms.term(at + 1).value() : value;
	}

	private static boolean isEnding(String word) {
		return word.equals("st") || word.equals("nd") || word.equals("rd") || word.equals("th");
	}

}

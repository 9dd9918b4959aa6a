package measuredwalk.reading.quantity;

import org.jspecify.annotations.Nullable;

/**
 * Reads decimals in words: 'five point five', 'nought point nought three', 'point 77'.
 */
final class DecimalWords {

	private DecimalWords() {
	}

	/** 'point 77' at that place, or null. */
	static @Nullable NumberPhrase pointAt(Terms terms, int at) {
		return terms.is(at, "point") ? decimals(terms, at, 0) : null;
	}

	/** The number with the decimals that follow it. */
	static NumberPhrase extended(Terms terms, NumberPhrase number) {
		if (!terms.is(number.end(), "point") || !number.isWhole()) {
			return number;
		}
		NumberPhrase longer = decimals(terms, number.end(), number.value());
		return longer == null ? number : longer;
	}

	private static @Nullable NumberPhrase decimals(Terms terms, int point, double whole) {
		double value = whole;
		double scale = 1;
		int at = point + 1;
		while (true) {
			double figures = figuresAt(terms, at);
			if (figures < 0) {
				break;
			}
			scale *= figures >= 10 ? 100 : 10;
			value += figures / scale;
			at++;
		}
		return at == point + 1 ? null : new NumberPhrase(value, at, NumberPhrase.Style.WORDS, false);
	}

	/** The figures that one word stands for behind the point, or -1. */
	private static double figuresAt(Terms terms, int at) {
		Term term = terms.term(at);
		return switch (term.numeral()) {
			case ZERO, DIGIT, TEEN -> term.value();
			case TENS -> terms.numeral(at + 1) == Numeral.DIGIT ? term.value() / 10 : term.value();
			case FIGURES -> Figures.isWholeFigures(terms.word(at)) && terms.word(at).length() <= 2
					? Figures.value(terms.word(at)) : -1;
			default -> -1;
		};
	}

}

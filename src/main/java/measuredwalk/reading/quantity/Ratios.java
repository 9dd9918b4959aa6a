package measuredwalk.reading.quantity;

import org.jspecify.annotations.Nullable;

/** Reads one number in terms of another: 'one out of three', '1 over 20', '1.1^23'. */
final class Ratios {

	private Ratios() {
	}

	static NumberPhrase extended(Terms terms, NumberPhrase number) {
		int end = number.end();
		if (terms.is(end, "^")) {
			return power(terms, number);
		}
		boolean outOf = terms.is(end, "out") && terms.is(end + 1, "of");
		boolean over = terms.is(end, "over");
		if (!outOf && !over) {
			return number;
		}
		NumberPhrase whole = Numbers.simpleAt(terms, end + (outOf ? 2 : 1));
		boolean ratio = whole != null && !whole.isArticle() && whole.value() > 0 && terms.unit(whole.end()) == null
				&& (over || number.value() < whole.value());
		return ratio && whole != null
				? new NumberPhrase(number.value() / whole.value(), whole.end(), NumberPhrase.Style.FRACTION, false)
				: number;
	}

	private static NumberPhrase power(Terms terms, NumberPhrase base) {
		int at = base.end() + 1;
		boolean negative = terms.is(at, "-");
		at += negative || terms.is(at, "+") ? 1 : 0;
		@Nullable NumberPhrase exponent = Figures.at(terms, at);
		if (exponent == null) {
			return base;
		}
		double value = Math.pow(base.value(), negative ? -exponent.value() : exponent.value());
		return new NumberPhrase(value, exponent.end(), base.style(), base.approximate());
	}

}

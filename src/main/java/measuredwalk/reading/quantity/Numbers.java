package measuredwalk.reading.quantity;

import org.jspecify.annotations.Nullable;

/**
 * Reads any number: with a sign, in words or figures, with a fraction, a decimal point in
 * words, dozens, 'a few'.
 */
final class Numbers {

	private static final int MAX_FILLERS = 2;

	private Numbers() {
	}

	static @Nullable NumberPhrase at(Terms terms, int at) {
		int sign = negativeSignEnd(terms, at);
		if (sign > at) {
			NumberPhrase positive = unsignedAt(terms, sign);
			return positive == null || positive.isArticle() ? null : positive.negated();
		}
		return unsignedAt(terms, at);
	}

	/** Index behind a minus sign that belongs to a number, else the index itself. */
	static int negativeSignEnd(Terms terms, int at) {
		if (terms.is(at, "minus") || terms.is(at, "negative")) {
			return at + 1;
		}
		boolean dash = terms.is(at, "-") && terms.glued(at + 1) && !terms.glued(at);
		boolean behindNumber = terms.numeral(at - 1).isCardinal() || terms.unit(at - 1) != null;
		Unit unit = terms.unit(at + 2);
		boolean frost = terms.is(at, "-") && terms.isFigures(at + 1) && unit != null && unit.is(Dimension.TEMPERATURE);
		return (dash || frost) && !behindNumber ? at + 1 : at;
	}

	private static @Nullable NumberPhrase unsignedAt(Terms terms, int at) {
		NumberPhrase number = simpleAt(terms, at);
		if (number == null || number.isArticle()) {
			return number;
		}
		return Ratios.extended(terms, MixedNumbers.extended(terms, number));
	}

	/** A number without 'and a half', 'out of ten' and the like behind it. */
	static @Nullable NumberPhrase simpleAt(Terms terms, int at) {
		return switch (terms.numeral(at)) {
			case ARTICLE -> afterArticle(terms, at);
			case VAGUE -> vague(terms, at);
			case PART -> part(terms, at);
			case DOZEN -> new NumberPhrase(12, skipOf(terms, at + 1), NumberPhrase.Style.VAGUE, false);
			case NONE, ORDINAL -> DecimalWords.pointAt(terms, at);
			default -> cardinal(terms, at);
		};
	}

	private static @Nullable NumberPhrase cardinal(Terms terms, int at) {
		NumberPhrase comma = DecimalComma.at(terms, at);
		NumberPhrase number = comma == null ? WordNumbers.at(terms, at) : comma;
		if (number == null) {
			return null;
		}
		NumberPhrase longer = DecimalWords.extended(terms, number);
		if (terms.numeral(longer.end()) == Numeral.DOZEN) {
			return longer.times(12, skipOf(terms, longer.end() + 1));
		}
		boolean thousands = terms.is(longer.end(), "k") && terms.glued(longer.end());
		return thousands ? longer.times(1000, longer.end() + 1) : longer;
	}

	private static @Nullable NumberPhrase afterArticle(Terms terms, int at) {
		int next = fillersEnd(terms, at + 1);
		Numeral numeral = terms.numeral(next);
		if (numeral == Numeral.ORDINAL) {
			double parts = terms.term(next).value();
			return parts < 3 ? article(at) : new NumberPhrase(1 / parts, next + 1, NumberPhrase.Style.FRACTION, false);
		}
		if (numeral == Numeral.TENS && terms.numeral(next + 1) == Numeral.ORDINAL && terms.joined(next + 1)) {
			double parts = terms.term(next).value() + terms.term(next + 1).value();
			return new NumberPhrase(1 / parts, next + 2, NumberPhrase.Style.FRACTION, false);
		}
		NumberPhrase number = numeral == Numeral.NONE || numeral == Numeral.ARTICLE ? null : simpleAt(terms, next);
		return number == null ? article(at) : number;
	}

	private static NumberPhrase article(int at) {
		return new NumberPhrase(1, at + 1, NumberPhrase.Style.ARTICLE, false);
	}

	private static NumberPhrase vague(Terms terms, int at) {
		boolean few = terms.is(at, "few");
		int next = skipOf(terms, at + 1);
		Term large = terms.term(next);
		if (large.numeral() == Numeral.HUNDRED || large.numeral() == Numeral.SCALE) {
			double factor = large.numeral() == Numeral.HUNDRED ? 100 : large.value();
			return new NumberPhrase(terms.term(at).value() * factor, next + 1, NumberPhrase.Style.VAGUE, true);
		}
		return new NumberPhrase(terms.term(at).value(), skipOf(terms, at + 1), NumberPhrase.Style.VAGUE, few);
	}

	/** 'half', 'quarter', 'half a dozen'. */
	private static @Nullable NumberPhrase part(Terms terms, int at) {
		if (!terms.is(at, "half") && !terms.is(at, "hauf") && !terms.is(at, "quarter") && !terms.is(at, "qtr")) {
			return null;
		}
		double value = 1 / terms.term(at).value();
		int next = terms.numeral(at + 1) == Numeral.ARTICLE ? at + 2 : at + 1;
		return terms.numeral(next) == Numeral.DOZEN
				? new NumberPhrase(value * 12, skipOf(terms, next + 1), NumberPhrase.Style.VAGUE, false)
				: new NumberPhrase(value, at + 1, NumberPhrase.Style.FRACTION, false);
	}

	/** Index behind words such as 'good' or 'more'. */
	static int fillersEnd(Terms terms, int at) {
		int end = at;
		while (end < at + MAX_FILLERS && terms.cue(end, Cue.FILLER)) {
			end++;
		}
		return end;
	}

	private static int skipOf(Terms terms, int at) {
		return terms.is(at, "of") ? at + 1 : at;
	}

}

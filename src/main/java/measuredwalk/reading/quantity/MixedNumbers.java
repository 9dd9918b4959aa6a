package measuredwalk.reading.quantity;

import org.jspecify.annotations.Nullable;

/**
 * Adds what is told behind a number: 'two and a half', '5 and an half', '2 and a bit'.
 */
final class MixedNumbers {

	private MixedNumbers() {
	}

	static NumberPhrase extended(Terms terms, NumberPhrase number) {
		if (number.style() == NumberPhrase.Style.FRACTION || !number.isWhole() || !terms.cue(number.end(), Cue.AND)) {
			return number;
		}
		int bit = bitEnd(terms, number.end());
		if (bit > number.end()) {
			return number.roughlyTo(bit);
		}
		NumberPhrase part = partAfterAnd(terms, number.end());
		return part == null ? digitAndPart(terms, number) : number.plus(part.value(), part.end());
	}

	/** Index behind 'and a bit', else the index itself. */
	static int bitEnd(Terms terms, int and) {
		int article = afterAnd(terms, and);
		boolean bit = article > and + 1 && (terms.is(article, "bit") || terms.is(article, "little"));
		return bit ? article + (terms.is(article + 1, "more") ? 2 : 1) : and;
	}

	/**
	 * The fraction behind an 'and', or null when what follows is no part of this number.
	 */
	static @Nullable NumberPhrase partAfterAnd(Terms terms, int and) {
		int at = afterAnd(terms, and);
		NumberPhrase sign = Figures.fractionAt(terms, at);
		if (sign != null) {
			return sign;
		}
		Numeral numeral = terms.numeral(at);
		if (numeral == Numeral.PART && isSingularPart(terms, at)) {
			return isClock(terms, at) ? null : part(1 / terms.term(at).value(), at + 1);
		}
		if (at > and + 1 && numeral == Numeral.ORDINAL && terms.term(at).value() >= 3) {
			return part(1 / terms.term(at).value(), at + 1);
		}
		boolean counted = numeral == Numeral.DIGIT || numeral == Numeral.TEEN || numeral == Numeral.FIGURES;
		NumberPhrase parts = counted ? WordNumbers.at(terms, at) : null;
		return parts != null && parts.style() == NumberPhrase.Style.FRACTION && parts.value() <= 1 ? parts : null;
	}

	/** Index behind the 'and' and an article, if there is one. */
	private static int afterAnd(Terms terms, int and) {
		boolean joinedArticle = terms.is(and, "an'");
		return terms.numeral(and + 1) == Numeral.ARTICLE && !joinedArticle ? and + 2 : and + 1;
	}

	/** 'twenty and three and three fifths'. */
	private static NumberPhrase digitAndPart(Terms terms, NumberPhrase number) {
		int digit = number.end() + 1;
		boolean tens = number.value() % 10 == 0 && number.style() == NumberPhrase.Style.WORDS;
		if (!tens || terms.numeral(digit) != Numeral.DIGIT || !terms.cue(digit + 1, Cue.AND)) {
			return number;
		}
		NumberPhrase part = partAfterAnd(terms, digit + 1);
		return part == null ? number : number.plus(terms.term(digit).value() + part.value(), part.end());
	}

	private static boolean isSingularPart(Terms terms, int at) {
		return terms.is(at, "half") || terms.is(at, "quarter") || terms.is(at, "qtr");
	}

	/** In 'ten and half past' the half is of an hour on the clock. */
	private static boolean isClock(Terms terms, int at) {
		return terms.is(at + 1, "past") || terms.is(at + 1, "to");
	}

	private static NumberPhrase part(double value, int end) {
		return new NumberPhrase(value, end, NumberPhrase.Style.FRACTION, false);
	}

}

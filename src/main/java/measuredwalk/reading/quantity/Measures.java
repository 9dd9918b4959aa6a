package measuredwalk.reading.quantity;

import org.jspecify.annotations.Nullable;

/** Reads one number with its unit: '20 mins', 'half an hour', 'a good mile', '1h05'. */
final class Measures {

	/** Dictation writes 'half an our'. */
	private static final Unit HEARD_HOUR = new Unit(Dimension.TIME, 3600, "hour", null);

	private Measures() {
	}

	/**
	 * The number at that place with the unit behind it, if any, or null without number.
	 */
	static @Nullable Measured at(Terms terms, int at) {
		Measured single = singleAt(terms, at);
		return single == null || !single.hasUnit() ? single : Compounds.extended(terms, single);
	}

	/** The same without smaller units behind it: 'an hour' of 'an hour and 5 minutes'. */
	static @Nullable Measured singleAt(Terms terms, int at) {
		NumberPhrase number = terms.is(at, "the") ? theHour(terms, at) : numberAt(terms, at);
		number = number == null ? untoldOne(terms, at) : number;
		if (number == null) {
			return null;
		}
		Measured measured = withUnit(terms, number);
		return measured.hasUnit() || !number.isArticle() ? measured : null;
	}

	/** The unit before the number, as in '£48', or null. */
	static @Nullable Measured moneyAt(Terms terms, int at) {
		Unit unit = terms.unit(at);
		if (unit == null || !unit.is(Dimension.MONEY) || !terms.isFigures(at + 1)) {
			return null;
		}
		NumberPhrase number = Numbers.simpleAt(terms, at + 1);
		return number == null ? null : new Measured(number.value(), number, named(terms, at), number.end(), Bound.NONE);
	}

	private static Unit named(Terms terms, int at) {
		return new Unit(Dimension.MONEY, 1, terms.word(at), null);
	}

	private static @Nullable NumberPhrase numberAt(Terms terms, int at) {
		NumberPhrase clockLike = ColonFigures.hoursAndMinutes(terms, at);
		return clockLike == null ? Numbers.at(terms, at) : clockLike;
	}

	/** 'the hour', 'the whole mile', 'all day': one of it. */
	private static @Nullable NumberPhrase theHour(Terms terms, int at) {
		int unit = Numbers.fillersEnd(terms, at + 1);
		boolean filler = unit > at + 1;
		boolean hour = terms.is(unit, "hour")
				|| (filler && (terms.is(unit, "mile") || terms.is(unit, "minute") || terms.is(unit, "kilometre")));
		return hour ? new NumberPhrase(1, at + 1, NumberPhrase.Style.ARTICLE, false) : null;
	}

	/** The one of 'hour and a half', which dictation and haste leave out. */
	private static @Nullable NumberPhrase untoldOne(Terms terms, int at) {
		Unit unit = terms.unit(at);
		boolean whole = unit != null && (terms.is(at, "hour") || terms.is(at, "hr") || terms.is(at, "mile"));
		if (whole && !terms.is(at, "mile") && terms.cue(at + 1, Cue.WALK) && !terms.cue(at - 1, Cue.DETERMINER)) {
			return new NumberPhrase(1, at, NumberPhrase.Style.WORDS, false);
		}
		boolean more = whole && terms.cue(at + 1, Cue.AND) && (MixedNumbers.partAfterAnd(terms, at + 1) != null
				|| MixedNumbers.bitEnd(terms, at + 1) > at + 1 || terms.numeral(at + 2).isCardinal());
		return more ? new NumberPhrase(1, at, NumberPhrase.Style.WORDS, false) : null;
	}

	private static Measured withUnit(Terms terms, NumberPhrase number) {
		Measured bare = new Measured(number.value(), number, null, number.end(), Bound.NONE);
		if (terms.word(number.end() - 1).endsWith("ish")) {
			bare = bare.bounded(Bound.ABOUT, bare.end());
		}
		Bounds.Found suffix = number.isArticle() ? null : Bounds.after(terms, number.end());
		if (suffix != null) {
			bare = bare.bounded(suffix.bound(), suffix.end());
		}
		UnitPhrase frost = BelowZero.at(terms, bare.end());
		if (frost != null) {
			return new Measured(-number.value(), number.negated(), frost.unit(), frost.end(), Bound.NONE);
		}
		UnitPhrase unit = unitAfter(terms, number, bare.end());
		if (unit == null || isForbidden(terms, number, unit)) {
			return bare;
		}
		double value = number.value() * unit.unit().size();
		return new Measured(value, number, unit.unit(), unit.end(), bare.bound());
	}

	private static @Nullable UnitPhrase unitAfter(Terms terms, NumberPhrase number, int end) {
		int at = end;
		if (number.style() == NumberPhrase.Style.FRACTION || number.approximate() || !number.isWhole()) {
			at = terms.is(at, "of") ? at + 1 : at;
			at = terms.numeral(at) == Numeral.ARTICLE || terms.is(at, "the") ? at + 1 : at;
		}
		boolean half = terms.is(number.end() - 1, "half");
		if (half && terms.numeral(at - 1) == Numeral.ARTICLE && terms.is(at, "our")) {
			return new UnitPhrase(HEARD_HOUR, at + 1);
		}
		boolean slurred = half && terms.is(at, "and") && terms.is(at + 1, "hour");
		UnitPhrase unit = Kilometres.isLetter(terms, at) && number.value() <= Kilometres.MOST ? Kilometres.at(at)
				: Units.at(terms, slurred ? at + 1 : at);
		if (unit != null) {
			return unit;
		}
		int behindFillers = Numbers.fillersEnd(terms, at);
		return behindFillers == at ? null : Units.at(terms, behindFillers);
	}

	/** 'a km' and 'an hr' are said; 'a dm' and 'a g' are something else. */
	private static boolean isAbbreviation(Terms terms, int at) {
		return terms.word(at).length() <= 2 && !terms.is(at, "km") && !terms.is(at, "hr")
				&& !Kilometres.isLetter(terms, at);
	}

	/**
	 * 'a second' and 'a g' are seldom measures; a lone letter needs figures before it.
	 */
	private static boolean isForbidden(Terms terms, NumberPhrase number, UnitPhrase unit) {
		int word = unit.end() - 1;
		if (number.isArticle()) {
			boolean second = terms.is(word, "second") && terms.kind(word + 1) == measuredwalk.reading.Token.Kind.WORD
					&& !terms.is(word + 1, "or") && !terms.is(word + 1, "and");
			return second || isAbbreviation(terms, word) || unit.unit().is(Dimension.OTHER)
					|| unit.unit().is(Dimension.TIMES);
		}
		return number.style() != NumberPhrase.Style.FIGURES && !Kilometres.isLetter(terms, word)
				&& terms.word(word).length() == 1 && number.style() != NumberPhrase.Style.FRACTION;
	}

}

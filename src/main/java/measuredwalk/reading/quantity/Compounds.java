package measuredwalk.reading.quantity;

import measuredwalk.reading.Token;
import org.jspecify.annotations.Nullable;

/**
 * Adds what follows a measure and belongs to it: '1 hour 20 minutes', 'an hour and a
 * half', '7 feet 10 inches', '1h05', 'an hour and twenty'.
 */
final class Compounds {

	/** On British signs m is a mile when yards or feet follow it. */
	private static final Unit MILE = new Unit(Dimension.LENGTH, 1609.344, "mile", null);

	private Compounds() {
	}

	static Measured extended(Terms terms, Measured first) {
		Measured measured = first;
		double smallest = unitOf(first).size();
		Measured longer = next(terms, measured, smallest);
		while (longer != null) {
			smallest = unitOf(longer).size();
			measured = new Measured(longer.value(), longer.number(), commonUnit(measured, longer), longer.end(),
					longer.bound(), longer.otherValue());
			longer = next(terms, measured, smallest);
		}
		return withTail(terms, measured, smallest);
	}

	private static Unit unitOf(Measured measured) {
		return java.util.Objects.requireNonNull(measured.unit());
	}

	/** The unit that names the dimension of the whole: metres in '3m and 5cm'. */
	private static Unit commonUnit(Measured first, Measured longer) {
		return unitOf(first).dimension() == unitOf(longer).dimension() ? new Unit(unitOf(longer).dimension(),
				unitOf(first).size(), unitOf(first).name(), bothAmbiguous(first, longer)) : unitOf(longer);
	}

	private static @Nullable Unit bothAmbiguous(Measured first, Measured longer) {
		return unitOf(longer).other() == null ? null : unitOf(first).other();
	}

	/** The measure with one more part of a smaller unit of the same kind, or null. */
	private static @Nullable Measured next(Terms terms, Measured measured, double smallest) {
		int at = partStart(terms, measured.end());
		NumberPhrase number = Numbers.at(terms, at);
		if (number == null || number.value() < 0) {
			return null;
		}
		UnitPhrase phrase = Units.at(terms, number.end());
		if (phrase == null) {
			return null;
		}
		Unit part = phrase.unit();
		Unit whole = unitOf(measured);
		if (whole.name().equals("minute") && whole.other() != null && isImperial(part)) {
			Measured miles = measured.in(MILE);
			return combined(miles, number, part, phrase.end(), miles.value());
		}
		if (whole.dimension() != part.dimension() && whole.other() != null && whole.other().is(part.dimension())) {
			return combined(measured.otherMeaning(), number, part, phrase.end(), measured.otherMeaning().value());
		}
		if (whole.dimension() != part.dimension() && part.other() != null && part.other().is(whole.dimension())) {
			part = part.other();
		}
		boolean fits = whole.dimension() == part.dimension() && part.size() < smallest && hasParts(whole);
		return fits ? combined(measured, number, part, phrase.end(), measured.value()) : null;
	}

	private static boolean isImperial(Unit part) {
		return part.name().equals("yard") || part.name().equals("foot");
	}

	private static Measured combined(Measured measured, NumberPhrase number, Unit part, int end, double value) {
		double other = part.other() == null ? 0 : number.value() * part.other().size();
		return new Measured(value + number.value() * part.size(), measured.number(), part, end, measured.bound(),
				measured.otherValue() + other);
	}

	private static boolean hasParts(Unit unit) {
		return switch (unit.dimension()) {
			case TIME, LENGTH, WEIGHT, AGE -> true;
			default -> false;
		};
	}

	/**
	 * Index of what may be the next part: behind a comma, an 'and', or both in any order.
	 */
	private static int partStart(Terms terms, int end) {
		int at = terms.is(end, ",") ? end + 1 : end;
		at = terms.is(at, "plus") || terms.is(at, "with") ? at + 1 : at;
		at = terms.cue(at, Cue.AND) && !terms.is(at, "n'") ? at + 1 : at;
		return at > end && terms.is(at, ",") ? at + 1 : at;
	}

	/** 'and a half', 'and a bit', or bare minutes behind hours. */
	private static Measured withTail(Terms terms, Measured measured, double smallest) {
		int and = measured.end();
		if (!terms.cue(and, Cue.AND)) {
			return BareMinutes.extended(terms, measured, smallest);
		}
		int bit = MixedNumbers.bitEnd(terms, and);
		if (bit > and) {
			return terms.unit(bit) == null ? measured.bounded(Bound.ABOUT, bit) : measured;
		}
		NumberPhrase part = MixedNumbers.partAfterAnd(terms, and);
		if (part == null) {
			return BareMinutes.extended(terms, measured, smallest);
		}
		return isOtherAmount(terms, part.end()) ? measured : measured.plus(part.value() * smallest, part.end());
	}

	/** In 'an hour and half a mile' the half belongs to the mile. */
	private static boolean isOtherAmount(Terms terms, int end) {
		int at = terms.is(end, "of") ? end + 1 : end;
		at = terms.numeral(at) == Numeral.ARTICLE || terms.is(at, "the") ? at + 1 : at;
		return at > end
				? terms.unit(at) != null || (at > end && terms.kind(at) == Token.Kind.WORD && terms.is(end, "of"))
				: terms.unit(at) != null;
	}

}

package measuredwalk.reading.quantity;

import measuredwalk.reading.Token;
import org.jspecify.annotations.Nullable;

/** Reads the unit behind a number, of one word or several. */
final class Units {

	private static final Unit CELSIUS = new Unit(Dimension.TEMPERATURE, 1, "celsius", null);

	private static final Unit FAHRENHEIT = new Unit(Dimension.TEMPERATURE, 1, "fahrenheit", null);

	private static final Unit KELVIN = new Unit(Dimension.TEMPERATURE, 1, "kelvin", null);

	private static final Unit INCH = new Unit(Dimension.LENGTH, 0.0254, "inch", null);

	private static final Unit PERCENT = new Unit(Dimension.PERCENT, 1, "percent", null);

	private static final Unit AREA = new Unit(Dimension.OTHER, 1, "area", null);

	private Units() {
	}

	/** The unit behind a number that ends before that index, or null. */
	static @Nullable UnitPhrase at(Terms terms, int at) {
		Unit unit = terms.unit(at);
		if (unit == null) {
			return special(terms, at);
		}
		if (unit.is(Dimension.MONEY) && terms.kind(at) == Token.Kind.SYMBOL) {
			return null;
		}
		return switch (unit.dimension()) {
			case TEMPERATURE -> temperature(terms, at, unit);
			case LENGTH -> length(terms, at, unit);
			case TIME -> time(terms, at, unit);
			case OTHER -> age(terms, at, unit);
			default -> new UnitPhrase(unit, at + 1);
		};
	}

	private static @Nullable UnitPhrase special(Terms terms, int at) {
		if (terms.is(at, "per") && terms.is(at + 1, "cent")) {
			return new UnitPhrase(PERCENT, at + 2);
		}
		if (terms.is(at, "square") || terms.is(at, "sq") || terms.is(at, "cubic")) {
			return terms.unit(at + 1) == null ? null : new UnitPhrase(AREA, at + 2);
		}
		Unit letter = terms.is(at, "c") ? CELSIUS : terms.is(at, "f") ? FAHRENHEIT : null;
		if (letter != null && terms.isFigures(at - 1) && isLoneLetter(terms, at)) {
			return new UnitPhrase(letter, at + 1);
		}
		return isInch(terms, at) ? new UnitPhrase(INCH, at + 1) : null;
	}

	/**
	 * '20C' and '20 c.' are degrees; in '777F', '14.7C/' and '20 c sections' they are
	 * not.
	 */
	private static boolean isLoneLetter(Terms terms, int at) {
		boolean free = !terms.glued(at + 1) || terms.is(at + 1, ",") || terms.is(at + 1, ".");
		boolean last = terms.kind(at + 1) != Token.Kind.WORD && terms.kind(at + 1) != Token.Kind.NUMBER;
		return free && (terms.glued(at) || last) && Figures.value(terms.word(at - 1)) <= 130;
	}

	/** The 'in' of '2 in.' and '12 ft 2 in', not the one of '12 in six boxes'. */
	private static boolean isInch(Terms terms, int at) {
		if (!terms.is(at, "in")) {
			return false;
		}
		boolean afterFeet = terms.is(at - 2, "ft") || terms.is(at - 2, "feet") || terms.is(at - 2, "foot");
		boolean atEnd = at + 1 == terms.size() || (terms.is(at + 1, ".") && at + 2 == terms.size());
		return afterFeet || terms.glued(at) || (atEnd && terms.isFigures(at - 1));
	}

	private static UnitPhrase temperature(Terms terms, int at, Unit degrees) {
		int next = at + 1;
		if (terms.is(next, "c") || terms.is(next, "celsius") || terms.is(next, "celcius")
				|| terms.is(next, "centigrade")) {
			return new UnitPhrase(CELSIUS, next + 1);
		}
		if (terms.is(next, "f") || terms.is(next, "fahrenheit") || terms.is(next, "farenheit")) {
			return new UnitPhrase(FAHRENHEIT, next + 1);
		}
		return terms.is(next, "kelvin") ? new UnitPhrase(KELVIN, next + 1) : new UnitPhrase(degrees, next);
	}

	private static UnitPhrase length(Terms terms, int at, Unit unit) {
		int next = at + 1;
		if (terms.glued(next) && (terms.is(next, "2") || terms.is(next, "3") || terms.is(next, "²"))
				&& terms.unit(next + 1) == null) {
			return new UnitPhrase(AREA, next + 1);
		}
		if (terms.is(at, "'") || terms.is(at, "\"")) {
			return new UnitPhrase(unit, next);
		}
		int perTime = perTimeEnd(terms, next);
		return perTime > next ? Speeds.of(terms, unit, perTime) : new UnitPhrase(unit, next);
	}

	/** Index behind 'per hour', 'an hour', '/h', else the index itself. */
	private static int perTimeEnd(Terms terms, int at) {
		boolean per = terms.is(at, "per") || terms.is(at, "a") || terms.is(at, "an") || terms.is(at, "/");
		Unit unit = terms.unit(at + 1);
		boolean fraction = terms.is(at + 1, "millisecond") || terms.is(at + 1, "ms");
		return per && (fraction || (unit != null && unit.is(Dimension.TIME))) ? at + 2 : at;
	}

	private static @Nullable UnitPhrase time(Terms terms, int at, Unit unit) {
		if (unit.other() != null) {
			return ambiguous(terms, at, unit, unit.other());
		}
		boolean ageBehind = unit.size() > 3600 && isOld(terms, at + 1);
		return ageBehind ? new UnitPhrase(new Unit(Dimension.AGE, unit.size() / 31_557_600, "year", null), at + 2)
				: new UnitPhrase(unit, at + 1);
	}

	/** A sign that is a time or a length: m, ', ". */
	private static @Nullable UnitPhrase ambiguous(Terms terms, int at, Unit unit, Unit length) {
		if (terms.is(at, "'") && terms.is(at + 1, "'") && terms.glued(at + 1)) {
			Unit second = java.util.Objects.requireNonNull(terms.unit(at));
			return new UnitPhrase(new Unit(Dimension.TIME, second.size() / 60, "second", INCH), at + 2);
		}
		boolean mark = !terms.is(at, "m");
		if (mark && (terms.is(at + 1, "s") || !terms.glued(at) || !terms.isFigures(at - 1))) {
			return null;
		}
		UnitPhrase asLength = length(terms, at, length);
		return asLength.unit().equals(length) ? new UnitPhrase(unit, at + 1) : asLength;
	}

	private static UnitPhrase age(Terms terms, int at, Unit unit) {
		boolean years = unit.name().equals("year");
		if ((years || unit.name().equals("month")) && isOld(terms, at + 1)) {
			return new UnitPhrase(new Unit(Dimension.AGE, years ? 1 : 1 / 12.0, "year", null), at + 2);
		}
		return new UnitPhrase(unit, at + 1);
	}

	private static boolean isOld(Terms terms, int at) {
		return terms.is(at, "old");
	}

}

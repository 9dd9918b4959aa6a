package measuredwalk.reading.quantity;

import org.jspecify.annotations.Nullable;

/** Gives an amount the kind of quantity that its unit tells. */
final class Kinds {

	private Kinds() {
	}

	static Match match(Terms terms, int start, Amounts.Found found) {
		Span span = terms.span(start, found.end());
		Quantity quantity = quantity(span, found.amount(), found.unit(), found.times());
		Unit unit = found.unit();
		Unit otherUnit = unit == null ? null : unit.other();
		if (otherUnit == null || found.other() == null) {
			return Match.of(quantity).in(unit);
		}
		Quantity other = quantity(span, found.other(), otherUnit, found.times());
		boolean longWay = unit != null && unit.name().equals("minute") && otherUnit.name().equals("metre")
				&& found.amount().value() > MOST_MINUTES * 60;
		return longWay ? Match.of(other, quantity).in(otherUnit) : Match.of(quantity, other).in(unit);
	}

	/** Above so many, m is metres: nobody walks an old dog longer. */
	private static final double MOST_MINUTES = 180;

	/** A number in a unit that was told with another number. */
	static Quantity in(Unit unit, BareNumber number) {
		return quantity(number.span(), number.amount().times(unit.size()), unit, number.times());
	}

	private static Quantity quantity(Span span, Amount amount, @Nullable Unit unit, int times) {
		if (unit == null) {
			return new BareNumber(span, amount, times);
		}
		return switch (unit.dimension()) {
			case TIME -> new Duration(span, amount, times);
			case LENGTH -> new Distance(span, amount, times);
			case WEIGHT -> new Weight(span, amount);
			case MONEY -> new Money(span, amount, unit.name());
			case DOSE -> new Dose(span, amount, unit.name());
			case SPEED -> new Speed(span, amount);
			case TEMPERATURE -> new Temperature(span, amount, scale(unit));
			case PERCENT -> new Percentage(span, amount);
			case TIMES -> new Count(span, amount);
			case AGE -> new Age(span, amount);
			case OTHER -> new OtherMeasure(span, amount, unit.name());
		};
	}

	private static @Nullable Scale scale(Unit unit) {
		return switch (unit.name()) {
			case "celsius" -> Scale.CELSIUS;
			case "fahrenheit" -> Scale.FAHRENHEIT;
			case "kelvin" -> Scale.KELVIN;
			default -> null;
		};
	}

}

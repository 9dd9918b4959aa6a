package measuredwalk.reading.quantity;

import java.time.LocalDateTime;
import java.util.List;
import java.util.Locale;

import measuredwalk.reading.Tokeniser;

/** Writes quantities in the short form of the tables of these tests. */
final class Rendered {

	private Rendered() {
	}

	/** All quantities of a text, apart by blanks, or 'none'. */
	static String quantities(String text, LocalDateTime now) {
		List<String> all = Quantities.in(Tokeniser.tokens(text), now).stream().map(Rendered::one).toList();
		return all.isEmpty() ? "none" : String.join(" ", all);
	}

	private static String one(Quantity quantity) {
		if (quantity instanceof Duration duration) {
			return times(duration.times()) + amount(duration.seconds()) + "s";
		}
		if (quantity instanceof Distance distance) {
			return times(distance.times()) + amount(distance.metres()) + "m";
		}
		if (quantity instanceof BareNumber number) {
			return times(number.times()) + "#" + amount(number.amount());
		}
		if (quantity instanceof ClockTime time) {
			return "@" + time.time();
		}
		if (quantity instanceof TimeRange range) {
			return "@" + range.from().time() + "-" + range.till().time();
		}
		return other(quantity);
	}

	private static String other(Quantity quantity) {
		if (quantity instanceof Temperature temperature) {
			Scale scale = temperature.scale();
			return amount(temperature.degrees()) + "°" + (scale == null ? "" : scale.letter());
		}
		if (quantity instanceof Weight weight) {
			return amount(weight.kilograms()) + "kg";
		}
		if (quantity instanceof Dose dose) {
			return amount(dose.amount()) + dose.unit();
		}
		if (quantity instanceof Age age) {
			return "age" + amount(age.years());
		}
		if (quantity instanceof Count count) {
			return "x" + amount(count.times());
		}
		if (quantity instanceof DayPart part) {
			return part.name();
		}
		if (quantity instanceof OtherMeasure measure) {
			return amount(measure.amount()) + measure.unit();
		}
		return quantity.getClass().getSimpleName().toLowerCase(Locale.ROOT);
	}

	private static String times(int times) {
		return times == 1 ? "" : times + "*";
	}

	private static String amount(Amount amount) {
		String about = amount.approximate() ? "~" : "";
		if (!amount.isRange()) {
			return about + plain(amount.value());
		}
		Double low = amount.low();
		Double high = amount.high();
		return about + (low == null ? "" : plain(low)) + ".." + (high == null ? "" : plain(high));
	}

	private static String plain(double value) {
		double rounded = Math.round(value * 1000) / 1000.0;
		return rounded == Math.rint(rounded) ? String.valueOf((long) rounded) : String.valueOf(rounded);
	}

}

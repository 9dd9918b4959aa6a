package measuredwalk.reading.quantity;

import measuredwalk.reading.quantity.Amounts.Found;
import org.jspecify.annotations.Nullable;

/**
 * Reads ranges: '15-20 mins', 'between 5 and 10', '10 mins, maybe 15', 'a mile or two'.
 */
final class Ranges {

	private Ranges() {
	}

	/** The range behind 'from' or 'between', whose first end was read, or null. */
	static @Nullable Found closed(Terms terms, Measured low) {
		boolean join = terms.cue(low.end(), Cue.RANGE) || terms.is(low.end(), "and") || terms.is(low.end(), "-");
		return join ? range(terms, low, low.end() + 1) : null;
	}

	/** The range whose first end was read, or null when no other end follows. */
	static @Nullable Found open(Terms terms, Measured low) {
		boolean counted = low.unit() != null && low.unit().is(Dimension.OTHER) && terms.is(low.end(), "-");
		if (counted || isTimeBeforeAmount(terms, low) || low.isCompound()) {
			return null;
		}
		int at = joinEnd(terms, low.end());
		if (at > low.end()) {
			return range(terms, low, at);
		}
		return low.hasUnit() ? null : side(terms, low);
	}

	/** '8.30 - 20 mins' tells when and how long. */
	private static boolean isTimeBeforeAmount(Terms terms, Measured low) {
		String word = terms.word(low.number().end() - 1);
		boolean time = !low.hasUnit() && word.length() - word.indexOf('.') == 3 && word.indexOf('.') > 0;
		return time && terms.is(low.end(), "-") && !terms.glued(low.end() + 1);
	}

	private static int joinEnd(Terms terms, int end) {
		if (terms.is(end, "-") && terms.is(end + 1, "to")) {
			return end + 2;
		}
		boolean slash = terms.is(end, "/") && terms.glued(end);
		if (terms.cue(end, Cue.RANGE) || slash) {
			int next = end + 1;
			return terms.is(next, "maybe") || terms.is(next, "even") || terms.is(next, "perhaps") ? next + 1 : next;
		}
		int maybe = terms.is(end, ",") ? end + 1 : end;
		boolean hedge = terms.is(maybe, "maybe") || terms.is(maybe, "perhaps") || terms.is(maybe, "possibly");
		return hedge ? maybe + 1 : end;
	}

	/** 'ten fifteen minutes': two rising numbers side by side before one unit. */
	private static @Nullable Found side(Terms terms, Measured low) {
		if (low.number().end() != low.end() || !isPlain(low) || low.value() < 2) {
			return null;
		}
		Measured high = Measures.at(terms, low.end());
		boolean rising = high != null && high.hasUnit() && isPlain(high) && high.number().value() > low.value()
				&& high.number().value() <= 3 * low.value() && (low.value() >= 5 || high.number().value() < 10);
		return rising && high != null && isRangeUnit(high) ? found(low, high) : null;
	}

	private static boolean isRangeUnit(Measured measured) {
		Unit unit = measured.unit();
		return unit != null && (unit.is(Dimension.TIME) || unit.is(Dimension.LENGTH));
	}

	private static boolean isPlain(Measured measured) {
		NumberPhrase.Style style = measured.number().style();
		return style == NumberPhrase.Style.FIGURES || style == NumberPhrase.Style.WORDS;
	}

	private static @Nullable Found range(Terms terms, Measured low, int at) {
		Measured high = Measures.at(terms, at);
		if (high == null || (low.hasUnit() && high.hasUnit() && !low.isLike(high))) {
			return null;
		}
		Term last = terms.term(high.number().end() - 1);
		boolean hundreds = last.numeral() == Numeral.HUNDRED && !low.hasUnit() && low.value() < 10
				&& high.number().value() > 99;
		if (hundreds) {
			return found(
					new Measured(low.value() * 100, low.number().times(100, low.end()), null, low.end(), low.bound()),
					high);
		}
		boolean rising = low.hasUnit() || high.hasUnit() || high.value() > low.value();
		return rising ? found(low, high) : null;
	}

	/** The range of two ends; the one without unit is in the unit of the other. */
	private static Found found(Measured low, Measured high) {
		Measured first = low;
		Measured second = high;
		Unit unit = low.unit();
		if (unit == null && high.unit() != null) {
			unit = high.unit();
			first = low.in(unit);
		}
		else if (unit != null && high.unit() == null) {
			second = high.in(unit);
		}
		else if (unit != null && high.unit() != null && unit.other() != null && high.unit().other() == null) {
			unit = high.unit();
		}
		Amount amount = amount(first.value(), second.value(), low, high);
		Amount other = unit == null || unit.other() == null ? null
				: amount(first.otherMeaning().value(), second.otherMeaning().value(), low, high);
		Bound bound = high.bound() == Bound.NONE ? low.bound() : high.bound();
		return new Found(first.bounded(bound, first.end()), amount, second.unit() == null ? unit : second.unit(), other,
				1, high.end());
	}

	private static Amount amount(double one, double other, Measured low, Measured high) {
		Amount amount = Amount.between(one, other);
		boolean rough = low.number().approximate() || high.number().approximate() || low.bound() == Bound.ABOUT
				|| high.bound() == Bound.ABOUT;
		return rough ? amount.roughly() : amount;
	}

}

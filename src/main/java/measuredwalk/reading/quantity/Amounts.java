package measuredwalk.reading.quantity;

import org.jspecify.annotations.Nullable;

/**
 * Reads an amount: one measure or a range of two, with the words round it that bound it,
 * and how often it was told to be.
 */
final class Amounts {

	/**
	 * An amount that was read.
	 *
	 * @param first the first measure
	 * @param amount in the base unit
	 * @param unit the unit, or null
	 * @param other the amount when the unit has its other meaning, else null
	 * @param times how often
	 * @param end index behind the last token
	 */
	record Found(Measured first, Amount amount, @Nullable Unit unit, @Nullable Amount other, int times, int end) {

		Found repeated(int newTimes, int newEnd) {
			return new Found(this.first, this.amount, this.unit, this.other, newTimes, newEnd);
		}

	}

	private static final int MAX_BOUNDS = 2;

	private Amounts() {
	}

	static @Nullable Found at(Terms terms, int start) {
		int at = start;
		Bound bound = Bound.NONE;
		boolean about = false;
		for (int words = 0; words < MAX_BOUNDS; words++) {
			Bounds.Found before = Bounds.before(terms, at);
			if (before == null) {
				break;
			}
			about |= before.bound() == Bound.ABOUT;
			bound = before.bound() == Bound.ABOUT && bound != Bound.NONE ? bound : before.bound();
			at = before.end();
		}
		Found found = unboundedAt(terms, at);
		return found == null ? null : bounded(terms, found, bound, about);
	}

	private static Found bounded(Terms terms, Found found, Bound before, boolean about) {
		Bounds.Found after = Bounds.after(terms, found.end());
		Bound bound = before;
		int end = found.end();
		if (after != null && (before == Bound.NONE || before == Bound.ABOUT || before == Bound.EXACT)) {
			bound = after.bound();
			end = after.end();
		}
		boolean open = bound == Bound.NONE || bound == Bound.ABOUT || bound == Bound.EXACT;
		bound = open && found.first().bound() != Bound.NONE ? found.first().bound() : bound;
		Amount amount = bound.applied(about ? found.amount().roughly() : found.amount());
		Amount other = found.other() == null ? null : bound.applied(found.other());
		return new Found(found.first(), amount, found.unit(), other, found.times(), end);
	}

	private static @Nullable Found unboundedAt(Terms terms, int at) {
		if (terms.is(at, "between") || terms.is(at, "from") || (terms.is(at, "anywhere") && terms.is(at + 1, "from"))) {
			int first = at + (terms.is(at, "anywhere") ? 2 : 1);
			Measured low = terms.is(at, "between") ? Measures.singleAt(terms, first) : Measures.at(terms, first);
			return low == null ? null : Ranges.closed(terms, low);
		}
		Measured money = Measures.moneyAt(terms, at);
		Measured measured = money == null ? Measures.at(terms, at) : money;
		if (measured == null) {
			return null;
		}
		Found repeated = Repeats.before(terms, measured);
		if (repeated != null) {
			return repeated;
		}
		Found range = Ranges.open(terms, measured);
		return Repeats.after(terms, range == null ? single(measured) : range);
	}

	static Found single(Measured measured) {
		Amount amount = Amount.of(measured.value());
		Unit unit = measured.unit();
		Amount other = unit == null || unit.other() == null ? null : Amount.of(measured.otherMeaning().value());
		boolean rough = measured.number().approximate() || measured.bound() == Bound.ABOUT;
		return new Found(measured, rough ? amount.roughly() : amount, unit, other, 1, measured.end());
	}

}

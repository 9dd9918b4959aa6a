package measuredwalk.reading.quantity;

import org.jspecify.annotations.Nullable;

/**
 * One number with its unit, if it has one.
 *
 * @param value in the base unit of the dimension; the bare number without unit
 * @param number the number as told
 * @param unit the unit, or null
 * @param end index behind the last token
 * @param bound what words at it say ('20 or more'), else NONE
 * @param otherValue the value when the unit has its other meaning, such as metres for m
 */
record Measured(double value, NumberPhrase number, @Nullable Unit unit, int end, Bound bound, double otherValue) {

	Measured(double value, NumberPhrase number, @Nullable Unit unit, int end, Bound bound) {
		this(value, number, unit, end, bound,
				unit == null || unit.other() == null ? value : number.value() * unit.other().size());
	}

	/** Whether it has parts of several units, or a tail, such as '1 hour 15'. */
	boolean isCompound() {
		return this.unit != null && this.unit.is(Dimension.TIME)
				&& Math.abs(this.value - this.number.value() * this.unit.size()) > 1e-6
				&& this.number.style() == NumberPhrase.Style.FIGURES;
	}

	boolean hasUnit() {
		return this.unit != null;
	}

	/** Whether it is of the same dimension as another. */
	boolean isLike(Measured other) {
		return this.unit != null && other.unit != null && this.unit.dimension() == other.unit.dimension();
	}

	Measured plus(double more, int newEnd) {
		return new Measured(this.value + more, this.number, this.unit, newEnd, this.bound, this.otherValue);
	}

	Measured bounded(Bound newBound, int newEnd) {
		return new Measured(this.value, this.number, this.unit, newEnd, newBound == Bound.NONE ? this.bound : newBound,
				this.otherValue);
	}

	/** The same number in a unit that was told with another number. */
	Measured in(Unit newUnit) {
		return new Measured(this.number.value() * newUnit.size(), this.number, newUnit, this.end, this.bound);
	}

	/** The other meaning of an ambiguous unit, such as metres for m. */
	Measured otherMeaning() {
		Unit other = this.unit == null ? null : this.unit.other();
		return other == null ? this : new Measured(this.otherValue, this.number, other, this.end, this.bound);
	}

}

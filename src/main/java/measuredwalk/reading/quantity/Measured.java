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
 */
record Measured(double value, NumberPhrase number, @Nullable Unit unit, int end, Bound bound) {

	boolean hasUnit() {
		return this.unit != null;
	}

	/** Whether it is of the same dimension as another. */
	boolean isLike(Measured other) {
		return this.unit != null && other.unit != null && this.unit.dimension() == other.unit.dimension();
	}

	Measured plus(double more, int newEnd) {
		return new Measured(this.value + more, this.number, this.unit, newEnd, this.bound);
	}

	Measured bounded(Bound newBound, int newEnd) {
		return new Measured(this.value, this.number, this.unit, newEnd, newBound == Bound.NONE ? this.bound : newBound);
	}

	/** The same number in a unit that was told with another number. */
	Measured in(Unit newUnit) {
		return new Measured(this.number.value() * newUnit.size(), this.number, newUnit, this.end, this.bound);
	}

	/** The other meaning of an ambiguous unit, such as metres for m. */
	Measured otherMeaning() {
		Unit other = this.unit == null ? null : this.unit.other();
		return other == null ? this : in(other);
	}

}

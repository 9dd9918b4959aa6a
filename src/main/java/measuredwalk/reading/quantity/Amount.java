package measuredwalk.reading.quantity;

import org.jspecify.annotations.Nullable;

/**
 * How much, in the unit of the quantity that holds it.
 *
 * @param value best single value: what was said, the middle of a range, or the one bound
 * that was told ('at least 20')
 * @param low the least it may be, or null when open ('under 20')
 * @param high the most it may be, or null when open ('at least 20')
 * @param approximate true when the words say so ('about', 'or so', 'a few')
 * @param exact true when the words say so ('exactly 20', 'equal to 20')
 */
public record Amount(double value, @Nullable Double low, @Nullable Double high, boolean approximate, boolean exact) {

	/**
	 * One value.
	 * @param value the value
	 * @return the amount
	 */
	public static Amount of(double value) {
		return new Amount(value, value, value, false, false);
	}

	/**
	 * Something between two values, told in any order.
	 * @param one one end
	 * @param other the other end
	 * @return the amount
	 */
	public static Amount between(double one, double other) {
		return new Amount((one + other) / 2, Math.min(one, other), Math.max(one, other), false, false);
	}

	/**
	 * So much or more.
	 * @param low the least
	 * @return the amount
	 */
	public static Amount atLeast(double low) {
		return new Amount(low, low, null, false, false);
	}

	/**
	 * So much or less.
	 * @param high the most
	 * @return the amount
	 */
	public static Amount atMost(double high) {
		return new Amount(high, null, high, false, false);
	}

	/**
	 * Whether more than one value was told or left open.
	 * @return true for a range or an open bound
	 */
	public boolean isRange() {
		return this.low == null || this.high == null || !this.low.equals(this.high);
	}

	/**
	 * The same amount in another unit.
	 * @param factor how many of the new unit one of the old is
	 * @return the amount in the new unit
	 */
	public Amount times(double factor) {
		Double newLow = this.low == null ? null : this.low * factor;
		Double newHigh = this.high == null ? null : this.high * factor;
		return new Amount(this.value * factor, newLow, newHigh, this.approximate, this.exact);
	}

	/**
	 * The same amount, said to be approximate.
	 * @return the approximate amount
	 */
	public Amount roughly() {
		return this.approximate ? this : new Amount(this.value, this.low, this.high, true, false);
	}

	/**
	 * The same amount, said to be exact.
	 * @return the exact amount
	 */
	public Amount exactly() {
		return new Amount(this.value, this.low, this.high, this.approximate, true);
	}

}

package measuredwalk.reading.quantity;

import java.time.LocalTime;

/**
 * A time of day as it was told.
 *
 * @param hour from 0 to 23
 * @param minute from 0 to 59
 * @param second from 0 to 59
 * @param known whether the half of the day was told
 * @param strength how sure it is that this is a time at all
 * @param end index behind its last token
 */
record ClockPhrase(int hour, int minute, int second, boolean known, Strength strength, int end) {

	enum Strength {

		/** A plain number. */
		BARE,
		/** Could be another number: 7.10, 'eight forty'. */
		LIKELY,
		/** Nothing else: 7:10, 7pm, 'ten past three', noon. */
		CLEAR

	}

	boolean isClear() {
		return this.strength == Strength.CLEAR;
	}

	boolean isBare() {
		return this.strength == Strength.BARE;
	}

	LocalTime time() {
		return LocalTime.of(this.hour, this.minute, this.second);
	}

	/** The same time with the half of the day that was told with it. */
	ClockPhrase in(HalfOfDay half, int newEnd) {
		int newHour = this.known && this.hour > 12 ? this.hour : half.hour(this.hour);
		return new ClockPhrase(newHour, this.minute, this.second, true, Strength.CLEAR, newEnd);
	}

	ClockPhrase clear(int newEnd) {
		return new ClockPhrase(this.hour, this.minute, this.second, this.known, Strength.CLEAR, newEnd);
	}

	/** The same time twelve hours away. */
	ClockPhrase otherHalf() {
		return new ClockPhrase((this.hour + 12) % 24, this.minute, this.second, this.known, this.strength, this.end);
	}

	int secondOfDay() {
		return time().toSecondOfDay();
	}

}

package measuredwalk.household;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.Set;

/**
 * When a household wants to be asked, in its own zone.
 *
 * @param morningAt when the morning check-in is asked; never quiet, for it was chosen
 * @param quietFrom from when on nothing unasked is sent
 * @param quietUntil until when nothing unasked is sent; when it is before
 * {@code quietFrom}, the quiet goes through midnight
 * @param daysOff days of the week on which nothing unasked is sent
 * @param walkQuestions false when walks are not asked about
 * @param fortnightPicture false when no picture of the fortnight is sent on Sundays
 */
public record Hours(LocalTime morningAt, LocalTime quietFrom, LocalTime quietUntil, Set<DayOfWeek> daysOff,
		boolean walkQuestions, boolean fortnightPicture) {

	/** Before most people leave for work: common practice, no source. */
	private static final LocalTime USUAL_MORNING = LocalTime.of(7, 30);

	/** When most people want peace: common practice, no source. */
	private static final LocalTime USUAL_QUIET_FROM = LocalTime.of(21, 30);

	private static final LocalTime USUAL_QUIET_UNTIL = LocalTime.of(7, 0);

	public Hours {
		daysOff = Set.copyOf(daysOff);
	}

	public static Hours usual() {
		return new Hours(USUAL_MORNING, USUAL_QUIET_FROM, USUAL_QUIET_UNTIL, Set.of(), true, true);
	}

	/**
	 * Whether nothing unasked may be sent at a time of the day.
	 * @param time the time
	 * @return true when it is quiet
	 */
	public boolean quietAt(LocalTime time) {
		boolean afterFrom = !time.isBefore(this.quietFrom);
		boolean beforeUntil = time.isBefore(this.quietUntil);
		boolean overMidnight = this.quietUntil.isBefore(this.quietFrom);
		return overMidnight ? (afterFrom || beforeUntil) : (afterFrom && beforeUntil);
	}

	/**
	 * Whether nothing unasked may be sent on a day.
	 * @param date the day
	 * @return true when it is a day off
	 */
	public boolean offOn(LocalDate date) {
		return this.daysOff.contains(date.getDayOfWeek());
	}

	/**
	 * The same hours with another morning hour.
	 * @param time when to ask in the morning
	 * @return the changed hours
	 */
	public Hours withMorningAt(LocalTime time) {
		return new Hours(time, this.quietFrom, this.quietUntil, this.daysOff, this.walkQuestions,
				this.fortnightPicture);
	}

	/**
	 * The same hours with another quiet time.
	 * @param from from when on
	 * @param until until when
	 * @return the changed hours
	 */
	public Hours withQuiet(LocalTime from, LocalTime until) {
		return new Hours(this.morningAt, from, until, this.daysOff, this.walkQuestions, this.fortnightPicture);
	}

	/**
	 * The same hours with other days off.
	 * @param days all days off
	 * @return the changed hours
	 */
	public Hours withDaysOff(Set<DayOfWeek> days) {
		return new Hours(this.morningAt, this.quietFrom, this.quietUntil, days, this.walkQuestions,
				this.fortnightPicture);
	}

	/**
	 * The same hours, with or without questions about walks.
	 * @param asked whether walks are asked about
	 * @return the changed hours
	 */
	public Hours withWalkQuestions(boolean asked) {
		return new Hours(this.morningAt, this.quietFrom, this.quietUntil, this.daysOff, asked, this.fortnightPicture);
	}

	/**
	 * The same hours, with or without the picture on Sundays.
	 * @param wanted whether it is sent
	 * @return the changed hours
	 */
	public Hours withFortnightPicture(boolean wanted) {
		return new Hours(this.morningAt, this.quietFrom, this.quietUntil, this.daysOff, this.walkQuestions, wanted);
	}

}

package measuredwalk.tolerance;

import java.time.LocalDate;
import java.util.List;

import measuredwalk.signs.Coded;

/**
 * A day on which more walking is wished for (visitors, a holiday), and how to spread it.
 * It is a plan: each morning's own suggestion still goes first.
 *
 * @param date the long day
 * @param wantedMinutes minutes wished for, all walks of the day together
 * @param grantedMinutes minutes that the limits allow, all walks of the day together
 * @param days the long day and the days that change for it, in order
 * @param reasons why, most important first
 */
public record LongDay(LocalDate date, double wantedMinutes, double grantedMinutes, List<PlannedDay> days,
		List<Why> reasons) {

	public LongDay {
		days = List.copyOf(days);
		reasons = List.copyOf(reasons);
	}

	/**
	 * One day of the plan.
	 *
	 * @param date the day
	 * @param walks number of walks
	 * @param minutes minutes of each
	 */
	public record PlannedDay(LocalDate date, int walks, double minutes) {

		/**
		 * All walks together.
		 * @return minutes
		 */
		public double total() {
			return this.walks * this.minutes;
		}

	}

	/** Why a long day is planned so. The codes are stable. */
	public enum Why implements Coded {

		/** The dog rests, or the clinic should be called or decides alone. */
		NOT_NOW,

		/** It is no more than on other days. */
		NO_MORE_THAN_USUAL,

		/** No day far above the dog's own mean. */
		NO_PEAK_DAY,

		/** The week's total grows enough already. */
		WEEKLY_TOTAL,

		/** More walks of that length do not fit into a day. */
		NO_MORE_WALKS,

		/** More walks, none of which is longer than is tolerated. */
		MORE_WALKS_NOT_LONGER_ONES,

		/** The days around it are shorter to make up for it. */
		SHORTER_DAYS_AROUND,

		/** What the dog shows until then decides. */
		THAT_MORNING_DECIDES

	}

}

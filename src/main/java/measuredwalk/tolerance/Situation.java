package measuredwalk.tolerance;

import java.time.LocalDate;

import org.jspecify.annotations.Nullable;

/**
 * All that the clinical limits look at.
 *
 * @param date today
 * @param standing what stands about the dog
 * @param past the days since enrolment, today not among them
 * @param morning this morning, or null when not told
 * @param alarm the gravest call for the clinic in what was told since yesterday
 * @param modelMinutes what the belief alone would choose
 * @param settledMinutes what it would choose if the dog were not new
 * @param medianMinutes median of today's tolerance
 */
record Situation(LocalDate date, Standing standing, PastDays past, @Nullable MorningGrade morning, Alarm alarm,
		double modelMinutes, double settledMinutes, double medianMinutes) {

	WalkPlan plan() {
		return this.standing.plan();
	}

	/**
	 * A past day.
	 * @param daysAgo 1 for yesterday
	 * @return the day, or null before enrolment
	 */
	@Nullable PastDay day(int daysAgo) {
		return this.past.day(daysAgo);
	}

	/** The suggestion of a past day, the plan before enrolment. */
	double suggested(int daysAgo) {
		PastDay day = day(daysAgo);
		return (day != null) ? day.minutes() : this.plan().planMinutes();
	}

	double bestSuggested(int fromDaysAgo, int toDaysAgo) {
		double best = 0;
		for (int ago = fromDaysAgo; ago <= toDaysAgo; ago++) {
			best = Math.max(best, suggested(ago));
		}
		return best;
	}

	/** A morning, that of today for 0. */
	@Nullable MorningGrade morning(int daysAgo) {
		if (daysAgo == 0) {
			return this.morning;
		}
		PastDay day = day(daysAgo);
		return (day != null) ? day.morning() : null;
	}

	/** Whether anything was told since yesterday's suggestion. */
	boolean heardSinceYesterday() {
		PastDay yesterday = day(1);
		return this.morning != null || yesterday == null || yesterday.walkedMinutes() > 0;
	}

}

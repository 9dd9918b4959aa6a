package measuredwalk.tolerance;

import org.jspecify.annotations.Nullable;

/**
 * What the clinical limits remember of a day, in plain minutes: a load lifts no limit.
 *
 * @param minutes the suggestion of that day, for each walk
 * @param walks walks suggested
 * @param morning how the morning was, or null when not told
 * @param heard whether anything was told of the day
 * @param walkedMinutes minutes told of, all walks together
 * @param longestClean longest walk without a sign, 0 when none
 * @param signs whether a sign was seen on a walk
 * @param harder whether a walk counted for more than its minutes
 * @param alarm the gravest call for the clinic that day
 */
record PastDay(double minutes, int walks, @Nullable MorningGrade morning, boolean heard, double walkedMinutes,
		double longestClean, boolean signs, boolean harder, Alarm alarm) {

	static PastDay of(DayPlan plan, DayFacts today) {
		double walked = 0;
		double longestClean = 0;
		boolean signs = false;
		for (ToleranceEvent.WalkTaken walk : today.walks()) {
			boolean clean = SignMeaning.counting(walk.signs()).isEmpty();
			walked += walk.minutes();
			longestClean = Math.max(longestClean, clean ? walk.minutes() : 0);
			signs |= !clean;
		}
		return new PastDay(plan.decision().minutes(), plan.decision().walks(), plan.morning(), today.heard(), walked,
				longestClean, signs, today.hasHarderWalk(), plan.situation().alarm());
	}

	/** Whether the owner told of any sign, of a walk or of the morning. */
	boolean toldOfSigns() {
		return this.signs || (this.morning != null && this.morning.seen() > 0);
	}

	double suggestedTotal() {
		return this.minutes * this.walks;
	}

	/** Minutes of the day. A walk that was not told of may well have been taken. */
	double total() {
		return Math.max(this.walkedMinutes, suggestedTotal());
	}

}

package measuredwalk.tolerance;

/**
 * The clinic's plan.
 *
 * @param planMinutes minutes of each walk, more than 0
 * @param walksPerDay walks a day, 1 to 6
 * @param minMinutes never suggest less than this for a walk, but on emergency or same-day
 * advice
 * @param maxMinutes never suggest more than this for a walk
 */
public record WalkPlan(double planMinutes, int walksPerDay, double minMinutes, double maxMinutes) {

	public WalkPlan {
		require(planMinutes > 0 && planMinutes <= 240, "planMinutes must be above 0 and at most 240");
		require(walksPerDay >= 1 && walksPerDay <= 6, "walksPerDay must be 1 to 6");
		require(minMinutes >= 0 && minMinutes <= planMinutes, "minMinutes must be from 0 to planMinutes");
		require(maxMinutes >= planMinutes && maxMinutes <= 240, "maxMinutes must be from planMinutes to 240");
	}

	private static void require(boolean holds, String otherwise) {
		if (!holds) {
			throw new IllegalArgumentException(otherwise);
		}
	}

}

package measuredwalk.household;

import java.time.LocalDate;

/**
 * The clinic's plan for a dog, from a day on.
 *
 * @param from the first day that it holds
 * @param planMinutes minutes of each walk, above 0 and at most 240
 * @param walksPerDay walks a day, 1 to 6
 * @param minMinutes the least minutes to suggest for a walk, from 0 to planMinutes
 * @param maxMinutes the most minutes to suggest for a walk, from planMinutes to 240
 */
public record Plan(LocalDate from, double planMinutes, int walksPerDay, double minMinutes, double maxMinutes) {

	private static final int LONGEST_MINUTES = 240;

	private static final int MOST_WALKS = 6;

	public Plan {
		Refused.unless(planMinutes > 0 && planMinutes <= LONGEST_MINUTES,
				"planMinutes must be above 0 and at most " + LONGEST_MINUTES + ".");
		Refused.unless(walksPerDay >= 1 && walksPerDay <= MOST_WALKS, "walksPerDay must be 1 to " + MOST_WALKS + ".");
		Refused.unless(minMinutes >= 0 && minMinutes <= planMinutes, "minMinutes must be from 0 to planMinutes.");
		Refused.unless(maxMinutes >= planMinutes && maxMinutes <= LONGEST_MINUTES,
				"maxMinutes must be from planMinutes to " + LONGEST_MINUTES + ".");
	}

}

package measuredwalk.tolerance;

import java.time.LocalDate;
import java.util.List;

/**
 * Today's walk.
 *
 * @param date the day, in the household's zone
 * @param walks number of walks left for the day at the time of asking
 * @param minutes minutes for each walk
 * @param minutesLow low end of the range to give to the owner, in minutes
 * @param minutesHigh high end of that range, in minutes
 * @param chanceOfTrouble the chance that one walk of that length passes the dog's
 * tolerance today, in [0, 1]
 * @param toleranceMedian median of the belief about today's tolerance, in minutes
 * @param toleranceLow low end of its 80 percent interval, in minutes
 * @param toleranceHigh high end of its 80 percent interval, in minutes
 * @param advice what kind of day to make of it
 * @param reasons stable codes in plain English words, most important first
 */
public record Suggestion(LocalDate date, int walks, double minutes, double minutesLow, double minutesHigh,
		double chanceOfTrouble, double toleranceMedian, double toleranceLow, double toleranceHigh, Advice advice,
		List<Reason> reasons) {

	public Suggestion {
		reasons = List.copyOf(reasons);
	}

}

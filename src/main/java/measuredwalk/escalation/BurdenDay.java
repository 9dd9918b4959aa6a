package measuredwalk.escalation;

import java.time.LocalDate;

/**
 * What a day adds to the burden of signs that the rules look at.
 *
 * @param date the day, in the household's zone
 * @param told false when nothing was told of it
 * @param grade the worst sign of moving: 0 none, 1 mild, 2 clear, 3 severe
 * @param minutes minutes of all its walks
 */
public record BurdenDay(LocalDate date, boolean told, int grade, double minutes) {
}

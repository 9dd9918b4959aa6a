package measuredwalk.pictures;

import java.time.LocalDate;

/**
 * A day of the trend that an alert rests on.
 *
 * @param date the day
 * @param told false when nothing was told of it
 * @param grade the worst sign of moving: 0 none, 1 mild, 2 clear, 3 severe
 * @param minutes minutes of all its walks
 */
public record TrendDay(LocalDate date, boolean told, int grade, double minutes) {
}

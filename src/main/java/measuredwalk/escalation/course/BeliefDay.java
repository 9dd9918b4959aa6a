package measuredwalk.escalation.course;

import java.time.LocalDate;

/**
 * What the model believed on a morning.
 *
 * @param date the day
 * @param toleranceMedian median of the belief about the tolerance, in minutes, above 0
 */
record BeliefDay(LocalDate date, double toleranceMedian) {
}

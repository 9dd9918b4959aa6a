package measuredwalk.household;

import java.time.LocalDate;

import org.jspecify.annotations.Nullable;

/**
 * A kind of medicine that a dog gets or got.
 *
 * @param kind the kind, such as {@code nsaid}; never a product or a dose
 * @param startedOn the first day known
 * @param stoppedOn the day it was stopped, or null while it is given
 * @param knownAtEnrolment true when the dog was on it already when it was taken on
 */
public record Medication(String kind, LocalDate startedOn, @Nullable LocalDate stoppedOn, boolean knownAtEnrolment) {
}

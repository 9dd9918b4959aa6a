package measuredwalk.clinic.caseload;

import java.time.Instant;
import java.time.LocalDate;
import java.util.UUID;

import org.jspecify.annotations.Nullable;

/**
 * How a dog stood when it was last looked at.
 *
 * @param dogId the dog
 * @param date the day, in the household's zone
 * @param concern how much it asks for a look
 * @param reason why, in words
 * @param minutes minutes suggested for each walk
 * @param walks walks left for the day
 * @param lastHeardAt when anything was last told of it, or null when nothing ever was
 * @param morningsAnswered mornings told of in the last 14 days
 * @param morningsExpected mornings that were there to be told of in that time
 */
public record DogStanding(UUID dogId, LocalDate date, Concern concern, String reason, double minutes, int walks,
		@Nullable Instant lastHeardAt, int morningsAnswered, int morningsExpected) {
}

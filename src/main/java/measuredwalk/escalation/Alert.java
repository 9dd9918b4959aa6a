package measuredwalk.escalation;

import java.time.Instant;
import java.util.List;
import java.util.UUID;

import org.jspecify.annotations.Nullable;

/**
 * Something that the clinic must look at.
 *
 * @param id its number
 * @param dogId the dog
 * @param level how soon
 * @param raisedAt when it was raised
 * @param reason why, in words of the trade
 * @param evidence the owner's own words, oldest first
 * @param status what became of it
 * @param acknowledgedBy who has seen it, or null
 * @param acknowledgedAt when, or null
 * @param note what was noted when it was acknowledged, or null
 * @param closedBy who closed it, or null
 * @param closedAt when, or null
 * @param closeNote what was noted when it was closed, or null
 */
public record Alert(UUID id, UUID dogId, AlertLevel level, Instant raisedAt, String reason, List<Evidence> evidence,
		AlertStatus status, @Nullable String acknowledgedBy, @Nullable Instant acknowledgedAt, @Nullable String note,
		@Nullable String closedBy, @Nullable Instant closedAt, @Nullable String closeNote) {

	public Alert {
		evidence = List.copyOf(evidence);
	}

}

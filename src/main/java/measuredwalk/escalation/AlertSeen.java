package measuredwalk.escalation;

import java.util.UUID;

/**
 * Somebody of the clinic has seen an alert for the first time.
 *
 * @param alertId the alert
 * @param dogId the dog
 */
public record AlertSeen(UUID alertId, UUID dogId) {
}

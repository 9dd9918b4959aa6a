package measuredwalk.escalation;

import java.util.UUID;

/**
 * An alert was raised.
 *
 * @param alertId the alert
 * @param dogId the dog
 */
public record AlertRaised(UUID alertId, UUID dogId) {
}

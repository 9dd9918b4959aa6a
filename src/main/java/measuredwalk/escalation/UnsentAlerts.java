package measuredwalk.escalation;

import java.util.Optional;
import java.util.UUID;

/** Knows what of an alert could not be sent. */
public interface UnsentAlerts {

	/**
	 * What could not be sent so far.
	 * @param alertId the alert
	 * @return a sentence, or empty when all of it went out
	 */
	Optional<String> of(UUID alertId);

}

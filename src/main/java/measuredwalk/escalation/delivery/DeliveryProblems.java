package measuredwalk.escalation.delivery;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

import measuredwalk.escalation.UnsentAlerts;
import measuredwalk.messaging.Outbox;
import org.springframework.stereotype.Component;

/** What of an alert could not be sent so far. */
@Component
class DeliveryProblems implements UnsentAlerts {

	private final AlertMails mails;

	private final Outbox outbox;

	DeliveryProblems(AlertMails mails, Outbox outbox) {
		this.mails = mails;
		this.outbox = outbox;
	}

	@Override
	public Optional<String> of(UUID alertId) {
		List<String> parts = new ArrayList<>();
		this.mails.failing(alertId).forEach((address) -> parts.add("the e-mail to " + address));
		if (this.outbox.anyFailed(AlertPost.key(alertId))) {
			parts.add("the message to a staff chat");
		}
		return parts.isEmpty() ? Optional.empty() : Optional.of("Not delivered: " + String.join(", ", parts) + ".");
	}

}

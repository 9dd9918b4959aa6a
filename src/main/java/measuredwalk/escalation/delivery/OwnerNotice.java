package measuredwalk.escalation.delivery;

import measuredwalk.escalation.Alert;
import measuredwalk.escalation.AlertLevel;
import measuredwalk.escalation.AlertSeen;
import measuredwalk.escalation.Alerts;
import measuredwalk.household.Carer;
import measuredwalk.household.Dog;
import measuredwalk.household.Households;
import measuredwalk.messaging.Outbox;
import measuredwalk.messaging.OutgoingMessage;
import org.springframework.context.event.EventListener;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

/** Tells the people at home that the clinic has seen what they wrote. */
@Component
class OwnerNotice {

	private final Alerts alerts;

	private final Households households;

	private final Outbox outbox;

	private final AlertWords words;

	OwnerNotice(Alerts alerts, Households households, Outbox outbox, AlertWords words) {
		this.alerts = alerts;
		this.households = households;
		this.outbox = outbox;
		this.words = words;
	}

	@EventListener
	@Transactional
	public void seen(AlertSeen seen) {
		Alert alert = this.alerts.one(seen.alertId()).orElseThrow();
		if (ownersKnow(alert)) {
			this.households.dog(seen.dogId()).ifPresent((dog) -> tell(alert, dog));
		}
	}

	/**
	 * A review may rest on a course that nobody at home was told of: then only a note of
	 * the clinic's is passed on.
	 */
	private static boolean ownersKnow(Alert alert) {
		boolean note = alert.note() != null && !alert.note().isBlank();
		return alert.level() != AlertLevel.REVIEW || note;
	}

	private void tell(Alert alert, Dog dog) {
		OutgoingMessage message = OutgoingMessage.of(this.words.ownerSeen(alert, dog));
		this.households.carersOf(dog.household().id())
			.stream()
			.filter((carer) -> !carer.silenced())
			.map(Carer::chatId)
			.distinct()
			.forEach((chat) -> this.outbox.write(chat, "seen/" + alert.id() + "/" + chat, message));
	}

}

package measuredwalk.clinic.api;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.UUID;
import java.util.stream.Stream;

import measuredwalk.escalation.Alert;
import measuredwalk.escalation.Alerts;
import measuredwalk.household.Carer;
import measuredwalk.household.Dog;
import measuredwalk.household.Households;
import measuredwalk.household.Plan;
import measuredwalk.journal.Attachments;
import measuredwalk.journal.Journal;
import measuredwalk.journal.Notes;
import measuredwalk.messaging.Inbox;
import measuredwalk.messaging.Outbox;
import org.springframework.stereotype.Component;

/** All that is held of a dog, for taking along. */
@Component
class Everything {

	private final Households households;

	private final Journal journal;

	private final Notes notes;

	private final Alerts alerts;

	private final Attachments attachments;

	private final Inbox inbox;

	private final Outbox outbox;

	Everything(Households households, Journal journal, Notes notes, Alerts alerts, Inbox inbox, Outbox outbox,
			Attachments attachments) {
		this.attachments = attachments;
		this.households = households;
		this.journal = journal;
		this.notes = notes;
		this.alerts = alerts;
		this.inbox = inbox;
		this.outbox = outbox;
	}

	Export of(Dog dog) {
		List<Carer> carers = this.households.carersOf(dog.household().id());
		List<Message> messages = new ArrayList<>();
		carers.forEach((carer) -> messages.addAll(messages(carer)));
		messages.sort(Comparator.comparing(Message::at));
		return new Export(DogView.of(dog), this.households.plansOf(dog.id()),
				JournalView.of(this.journal.walkHistory(dog.id()), this.journal.morningHistory(dog.id()),
						this.households.medicationsOf(dog.id()), this.notes.of(dog.id()),
						this.attachments.of(dog.id())),
				this.alerts.of(dog.id()), carers.stream().map((carer) -> new Person(carer.id(), carer.name())).toList(),
				messages);
	}

	private List<Message> messages(Carer carer) {
		Stream<Message> from = this.inbox.of(carer.chatId())
			.stream()
			.map((message) -> new Message(carer.name(), "from", message.text(), message.receivedAt()));
		Stream<Message> to = this.outbox.of(carer.chatId())
			.stream()
			.map((entry) -> new Message(carer.name(), "to", entry.message().text(), entry.writtenAt()));
		return Stream.concat(from, to).toList();
	}

	record Export(DogView dog, List<Plan> plans, JournalView journal, List<Alert> alerts, List<Person> carers,
			List<Message> messages) {
	}

	record Person(UUID id, String name) {
	}

	record Message(String carer, String direction, String text, Instant at) {
	}

}

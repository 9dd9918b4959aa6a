package measuredwalk.care;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Stream;

import measuredwalk.conversations.CheckIn;
import measuredwalk.conversations.CheckIns;
import measuredwalk.conversations.Replies;
import measuredwalk.household.Carer;
import measuredwalk.household.Dog;
import measuredwalk.household.Households;
import measuredwalk.journal.Journal;
import measuredwalk.journal.MorningEntry;
import measuredwalk.journal.WalkEntry;
import measuredwalk.messaging.Outbox;
import measuredwalk.prompts.PromptHandler;
import org.springframework.stereotype.Component;

/**
 * The morning check-in that comes by itself: to one carer, and only if nobody told yet.
 */
@Component
class MorningStory implements PromptHandler {

	private final Households households;

	private final Journal journal;

	private final CheckIns checkIns;

	private final Outbox outbox;

	private final Replies replies;

	MorningStory(Households households, Journal journal, CheckIns checkIns, Outbox outbox, Replies replies) {
		this.households = households;
		this.journal = journal;
		this.checkIns = checkIns;
		this.outbox = outbox;
		this.replies = replies;
	}

	@Override
	public void morning(UUID dogId, LocalDate date) {
		Dog dog = this.households.dog(dogId).orElseThrow();
		if (this.journal.morningOf(dogId, date).isPresent()) {
			return;
		}
		toAsk(dog).ifPresent((carer) -> ask(dog, date, carer));
	}

	private void ask(Dog dog, LocalDate date, Carer carer) {
		CheckIn checkIn = this.checkIns.open(carer.chatId(), dog.id(), CheckIns.NEXT_MORNING, date);
		Reply reply = new Reply(this.outbox, this.replies, carer.chatId(), "morning/" + dog.id() + "/" + date);
		this.checkIns.next(checkIn.id(), Set.of(), Set.of(), Map.of("dog", dog.name())).ifPresent(reply::ask);
	}

	/** The carer who told last; if nobody told yet, the one who joined first. */
	private Optional<Carer> toAsk(Dog dog) {
		List<Carer> carers = this.households.carersOf(dog.household().id())
			.stream()
			.filter((carer) -> !carer.silenced())
			.toList();
		return lastTeller(dog).flatMap((id) -> carers.stream().filter((carer) -> carer.id().equals(id)).findFirst())
			.or(() -> carers.stream().findFirst());
	}

	private Optional<UUID> lastTeller(Dog dog) {
		Stream<Told> walks = this.journal.walks(dog.id()).stream().map(MorningStory::told);
		Stream<Told> mornings = this.journal.mornings(dog.id()).stream().map(MorningStory::told);
		return Stream.concat(walks, mornings).max(Comparator.comparing(Told::at)).map(Told::by);
	}

	private static Told told(WalkEntry walk) {
		return new Told(walk.reportedAt(), walk.reportedBy().carerId());
	}

	private static Told told(MorningEntry morning) {
		return new Told(morning.reportedAt(), morning.reportedBy().carerId());
	}

	private record Told(java.time.Instant at, UUID by) {
	}

}

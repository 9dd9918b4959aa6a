package measuredwalk.care;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;

import measuredwalk.household.Carer;
import measuredwalk.household.Dog;
import measuredwalk.household.Households;
import measuredwalk.journal.Journal;
import measuredwalk.journal.MorningEntry;
import measuredwalk.journal.WalkEntry;
import measuredwalk.messaging.Chats;
import org.springframework.stereotype.Component;

/**
 * The one carer who is asked: who told last, and if nobody told yet, who joined first.
 * Who wants no messages or cannot be reached is not asked.
 */
@Component
class WhomToAsk {

	private final Households households;

	private final Journal journal;

	private final Chats chats;

	WhomToAsk(Households households, Journal journal, Chats chats) {
		this.households = households;
		this.journal = journal;
		this.chats = chats;
	}

	Optional<Carer> first(Dog dog) {
		List<Carer> carers = everybody(dog);
		return lastTeller(dog).flatMap((id) -> carers.stream().filter((carer) -> carer.id().equals(id)).findFirst())
			.or(() -> carers.stream().findFirst());
	}

	/** The carer to ask when another did not answer; that one again when alone. */
	Optional<Carer> next(Dog dog, long chatIdOfFirst) {
		List<Carer> carers = everybody(dog);
		return carers.stream()
			.filter((carer) -> carer.chatId() != chatIdOfFirst)
			.findFirst()
			.or(() -> carers.stream().findFirst());
	}

	/** All who may be written to, in the order in which they joined. */
	List<Carer> everybody(Dog dog) {
		return this.households.carersOf(dog.household().id())
			.stream()
			.filter((carer) -> !carer.silenced() && this.chats.reachable(carer.chatId()))
			.toList();
	}

	private Optional<UUID> lastTeller(Dog dog) {
		Stream<Told> walks = this.journal.walks(dog.id()).stream().map(WhomToAsk::told);
		Stream<Told> mornings = this.journal.mornings(dog.id()).stream().map(WhomToAsk::told);
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

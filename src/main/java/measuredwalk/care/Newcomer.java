package measuredwalk.care;

import java.util.Map;

import measuredwalk.conversations.Phrase;
import measuredwalk.conversations.Replies;
import measuredwalk.household.Carer;
import measuredwalk.household.Dog;
import measuredwalk.household.DogCameToHousehold;
import measuredwalk.household.Households;
import measuredwalk.messaging.Outbox;
import measuredwalk.speech.Speaking;
import org.springframework.context.event.EventListener;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

/**
 * Tells the people of a household when their clinic has taken on another dog of theirs.
 */
@Component
class Newcomer {

	private final Households households;

	private final Outbox outbox;

	private final Replies replies;

	private final Figures figures;

	Newcomer(Households households, Outbox outbox, Replies replies, Figures figures) {
		this.figures = figures;
		this.households = households;
		this.outbox = outbox;
		this.replies = replies;
	}

	@EventListener
	@Transactional
	public void came(DogCameToHousehold newcomer) {
		this.households.dog(newcomer.dogId())
			.ifPresent((dog) -> Speaking.as(dog.household().speech(), () -> tellEverybody(dog)));
	}

	private void tellEverybody(Dog dog) {
		this.households.carersOf(dog.household().id())
			.stream()
			.filter((carer) -> !carer.silenced())
			.forEach((carer) -> tell(carer, dog));
	}

	private void tell(Carer carer, Dog dog) {
		Reply reply = new Reply(this.outbox, this.replies, carer.chatId(), "newcomer/" + dog.id());
		reply.say(Phrase.JOINED, Map.of("dog", dog.name()));
		reply.say(Phrase.PLAN, Map.of("dog", dog.name(), "walks", this.figures.walks(dog.plan().walksPerDay()),
				"minutes", this.figures.minutes(dog.plan().planMinutes())));
	}

}

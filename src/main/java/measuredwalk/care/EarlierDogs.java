package measuredwalk.care;

import java.util.List;
import java.util.Locale;
import java.util.Map;

import measuredwalk.conversations.Part;
import measuredwalk.conversations.Phrase;
import measuredwalk.conversations.Replies;
import measuredwalk.household.Dog;
import measuredwalk.household.Households;
import measuredwalk.messaging.Outbox;
import org.springframework.stereotype.Component;

/**
 * Whoever joins another household is asked once whether the chat goes on with the dogs
 * that it was about before. Without an answer it does not.
 */
@Component
class EarlierDogs {

	private final Households households;

	private final Outbox outbox;

	private final Replies replies;

	private final Figures figures;

	EarlierDogs(Households households, Outbox outbox, Replies replies, Figures figures) {
		this.figures = figures;
		this.households = households;
		this.outbox = outbox;
		this.replies = replies;
	}

	void ask(long chatId, List<Dog> joined, Reply reply) {
		List<Dog> earlier = this.households.dogsLeftFor(chatId);
		if (!earlier.isEmpty()) {
			reply.ask(Phrase.KEEP_BOTH, Map.of("earlier", and(earlier)),
					List.of(this.replies.part(Part.KEEP_BOTH), this.replies.part(Part.ONLY, and(joined))));
		}
	}

	/**
	 * Takes the answer, if this was asked last.
	 * @return true when it was the answer
	 */
	boolean answered(List<Turn> dogs, Reply reply) {
		String text = dogs.get(0).english().strip().toLowerCase(Locale.ROOT);
		boolean keep = List.of("keep both", "both", "yes", "yes please", "keep them", "all of them").contains(text);
		if (!(keep || text.startsWith("only ") || text.equals("no")) || !askedLast(dogs.get(0).chatId())) {
			return false;
		}
		List<Dog> joined = dogs.stream().map(Turn::dog).toList();
		if (keep) {
			List<Dog> all = new java.util.ArrayList<>(this.households.dogsLeftFor(dogs.get(0).chatId()));
			all.addAll(joined);
			this.households.stayAsWell(dogs.get(0).chatId());
			reply.say(Phrase.KEPT_BOTH, Map.of("dogs", and(all)));
		}
		else {
			reply.say(Phrase.KEPT_ONE, Map.of("dog", and(joined)));
		}
		return true;
	}

	private boolean askedLast(long chatId) {
		List<Dog> earlier = this.households.dogsLeftFor(chatId);
		String question = this.replies.say(Phrase.KEEP_BOTH, Map.of("earlier", and(earlier)));
		return !earlier.isEmpty() && this.outbox.lastText(chatId).filter(question::equals).isPresent();
	}

	private String and(List<Dog> dogs) {
		return this.figures.and(dogs.stream().map(Dog::name).toList());
	}

}

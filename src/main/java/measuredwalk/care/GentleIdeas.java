package measuredwalk.care;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import measuredwalk.conversations.Ideas;
import measuredwalk.conversations.Phrase;
import measuredwalk.conversations.Replies;
import measuredwalk.household.Carer;
import measuredwalk.household.Households;
import measuredwalk.messaging.Outbox;
import measuredwalk.messaging.OutgoingMessage;
import measuredwalk.suggestions.Suggestions;
import measuredwalk.tolerance.Suggestion;
import org.springframework.stereotype.Component;

/**
 * On a day of less walking, one idea against boredom; the next one comes on another day.
 * It goes to whoever hears first that day that the walks are shorter.
 */
@Component
class GentleIdeas {

	private static final String KIND = "idea/";

	private final Suggestions suggestions;

	private final Ideas ideas;

	private final Households households;

	private final Outbox outbox;

	private final Replies replies;

	GentleIdeas(Suggestions suggestions, Ideas ideas, Households households, Outbox outbox, Replies replies) {
		this.suggestions = suggestions;
		this.ideas = ideas;
		this.households = households;
		this.outbox = outbox;
		this.replies = replies;
	}

	/** Says the idea of the day, once, if the walks are shorter than they were. */
	void sayIfWalksAreCut(Turn turn) {
		LocalDate today = turn.today();
		List<Suggestion> mornings = this.suggestions.days(turn.dog(), today.minusDays(1));
		if (CutWalks.cut(this.suggestions.today(turn.dog()), mornings)) {
			String ofDog = KIND + turn.dog().id() + "/";
			this.outbox.write(turn.chatId(), ofDog + today, OutgoingMessage.of(next(turn, ofDog)));
		}
	}

	private String next(Turn turn, String ofDog) {
		List<Long> chats = this.households.carersOf(turn.dog().household().id()).stream().map(Carer::chatId).toList();
		Optional<String> last = this.outbox.lastText(chats, ofDog);
		String before = this.ideas.ideas()
			.stream()
			.filter((idea) -> last.filter(said(idea)::equals).isPresent())
			.findFirst()
			.orElse(null);
		return said(this.ideas.after(before));
	}

	private String said(String idea) {
		return this.replies.say(Phrase.GENTLE_IDEA, Map.of("idea", idea));
	}

}

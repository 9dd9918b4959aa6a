package measuredwalk.care;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

import measuredwalk.conversations.Part;
import measuredwalk.conversations.Phrase;
import measuredwalk.conversations.Replies;
import measuredwalk.messaging.Inbox;
import measuredwalk.messaging.IncomingMessage;
import measuredwalk.messaging.Outbox;
import org.springframework.stereotype.Component;

/**
 * Asks which of several dogs a message is about, once, and takes the answer: the message
 * is then taken as if it had named the dog. Which messages wait is told by the questions
 * that went out, so that a restart loses none.
 */
@Component
class WhichDog {

	private static final Duration WAITS = Duration.ofHours(24);

	private final Inbox inbox;

	private final Outbox outbox;

	private final Replies replies;

	private final ReadingMeters meters;

	private final Figures figures;

	WhichDog(Inbox inbox, Outbox outbox, Replies replies, ReadingMeters meters, Figures figures) {
		this.meters = meters;
		this.figures = figures;
		this.inbox = inbox;
		this.outbox = outbox;
		this.replies = replies;
	}

	/**
	 * Asks.
	 * @param together true when the answer may be all of them
	 */
	void ask(List<Turn> dogs, boolean together, Reply reply) {
		List<String> choices = new ArrayList<>(Turns.names(dogs));
		if (together) {
			choices.add(this.replies.part((dogs.size() == 2) ? Part.BOTH : Part.ALL));
		}
		this.meters.askedBackDog();
		reply.ask(Phrase.WHICH_DOG, places(dogs), choices);
	}

	private Map<String, String> places(List<Turn> dogs) {
		return Map.of("dogs", this.figures.or(Turns.names(dogs)));
	}

	/** The messages that were asked about and wait for this answer, about its dogs. */
	List<Turn> answered(List<Turn> dogs) {
		DogNames names = new DogNames(Turns.names(dogs));
		Set<Integer> chosen = names.only(dogs.get(0).english());
		if (chosen.isEmpty()) {
			return List.of();
		}
		List<IncomingMessage> waiting = waiting(dogs, names);
		return waiting.stream()
			.flatMap((message) -> chosen.stream()
				.map(dogs::get)
				.map((turn) -> new Turn(message, turn.carer(), turn.dog(), turn.dogs(), message.text())))
			.toList();
	}

	private List<IncomingMessage> waiting(List<Turn> dogs, DogNames names) {
		IncomingMessage answer = dogs.get(0).message();
		String question = this.replies.say(Phrase.WHICH_DOG, places(dogs));
		Set<Long> asked = this.outbox.keysOf(answer.chatId(), question)
			.stream()
			.map(WhichDog::causeOf)
			.collect(Collectors.toSet());
		List<IncomingMessage> before = asked.isEmpty() ? List.of()
				: this.inbox.of(answer.chatId()).stream().filter((each) -> each.id() < answer.id()).toList();
		long settled = before.stream()
			.filter((each) -> !each.text().startsWith("/") && !names.in(each.text()).isEmpty())
			.mapToLong(IncomingMessage::id)
			.max()
			.orElse(0);
		return before.stream()
			.filter((each) -> each.id() > settled && asked.contains(each.id()))
			.filter((each) -> each.receivedAt().plus(WAITS).isAfter(answer.receivedAt()))
			.toList();
	}

	/** Answers have the key 'in/message/chat/number'. */
	private static long causeOf(String key) {
		String[] parts = key.split("/");
		return (parts.length > 1 && parts[0].equals("in")) ? Long.parseLong(parts[1]) : 0;
	}

}

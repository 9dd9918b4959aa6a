package measuredwalk.care;

import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;

import measuredwalk.conversations.CheckIn;
import measuredwalk.conversations.CheckIns;
import measuredwalk.conversations.Lesson;
import measuredwalk.conversations.LookingGuide;
import measuredwalk.conversations.Phrase;
import measuredwalk.conversations.Replies;
import measuredwalk.conversations.Slot;
import measuredwalk.household.Dog;
import measuredwalk.messaging.MessagePicture;
import measuredwalk.messaging.Outbox;
import measuredwalk.messaging.OutgoingMessage;
import measuredwalk.reading.Reading;
import org.springframework.stereotype.Component;

/** {@code /signs}: what one can learn to see, and a lesson for each. */
@Component
class LookingTalk {

	private final LookingGuide guide;

	private final CheckIns checkIns;

	private final Outbox outbox;

	private final Replies replies;

	LookingTalk(LookingGuide guide, CheckIns checkIns, Outbox outbox, Replies replies) {
		this.guide = guide;
		this.checkIns = checkIns;
		this.outbox = outbox;
		this.replies = replies;
	}

	void command(Turn turn, String wish, Reply reply) {
		this.guide.about(wish).ifPresentOrElse((lesson) -> show(turn, lesson, reply), () -> list(reply));
	}

	private void list(Reply reply) {
		reply.ask(Phrase.LOOKING_LIST, Map.of(), this.guide.lessons().stream().map(Lesson::title).toList());
	}

	/**
	 * Shows the lesson whose button was pressed.
	 * @return false when the message is no lesson's title
	 */
	boolean answered(Turn turn, Reply reply) {
		Optional<Lesson> pressed = this.guide.titled(turn.message().text());
		pressed.ifPresent((lesson) -> show(turn, lesson, reply));
		return pressed.isPresent();
	}

	/** A question that the lesson came in between is asked once more. */
	private void show(Turn turn, Lesson lesson, Reply reply) {
		reply.show(lesson.text(), new MessagePicture(SignDrawings.KIND + "/" + lesson.sign().code(), lesson.drawing()));
		Optional<CheckIn> open = this.checkIns.current(turn.chatId());
		open.flatMap((checkIn) -> this.checkIns.waiting(checkIn.id(), Map.of("dog", nameIn(checkIn, turn))))
			.ifPresent(reply::ask);
	}

	private static String nameIn(CheckIn open, Turn turn) {
		return turn.dogs()
			.stream()
			.filter((dog) -> dog.id().equals(open.dogId()))
			.map(Dog::name)
			.findFirst()
			.orElse(turn.dog().name());
	}

	/**
	 * Tells of the guide once for each dog, when signs are asked about or told with
	 * doubt.
	 */
	void offerOnce(Turn turn, Reading reading) {
		if (asksOfSigns(turn) || doubted(reading)) {
			this.outbox.write(turn.chatId(), "looking/" + turn.dog().id(),
					OutgoingMessage.of(this.replies.say(Phrase.LOOKING_OFFER)));
		}
	}

	private boolean asksOfSigns(Turn turn) {
		return this.checkIns.current(turn.chatId())
			.filter((open) -> open.conversation().equals(CheckIns.AFTER_WALK))
			.filter((open) -> open.asked().contains(Slot.SIGNS))
			.isPresent();
	}

	private boolean doubted(Reading reading) {
		return IntStream.range(0, reading.signs().size())
			.filter((index) -> reading.unsure().contains("signs[" + index + "]"))
			.anyMatch((index) -> this.guide.teaches(reading.signs().get(index).kind()));
	}

}

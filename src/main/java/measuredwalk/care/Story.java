package measuredwalk.care;

import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;

import measuredwalk.conversations.Part;
import measuredwalk.conversations.Phrase;
import measuredwalk.conversations.Replies;
import measuredwalk.escalation.StaffReplies;
import measuredwalk.household.Carer;
import measuredwalk.household.Households;
import measuredwalk.messaging.IncomingHandler;
import measuredwalk.messaging.IncomingMessage;
import measuredwalk.messaging.Outbox;
import measuredwalk.reading.Reading;
import measuredwalk.speech.Speaking;
import org.springframework.stereotype.Component;

/** The front door: whose message it is, and who takes it. */
@Component
class Story implements IncomingHandler {

	private final Households households;

	private final Outbox outbox;

	private final Replies replies;

	private final StaffReplies staffReplies;

	private final Commands commands;

	private final SetUp setUp;

	private final Ears ears;

	private final Urgency urgency;

	private final Turns turns;

	private final Farewells farewells;

	private final LookingTalk looking;

	private final SundayPicture picture;

	private final HomeTalk homeTalk;

	private final SpeechTalk speechTalk;

	Story(Households households, Outbox outbox, Replies replies, StaffReplies staffReplies, Commands commands,
			SetUp setUp, Ears ears, Urgency urgency, Turns turns, Farewells farewells, LookingTalk looking,
			SundayPicture picture, HomeTalk homeTalk, SpeechTalk speechTalk) {
		this.speechTalk = speechTalk;
		this.households = households;
		this.outbox = outbox;
		this.replies = replies;
		this.staffReplies = staffReplies;
		this.commands = commands;
		this.setUp = setUp;
		this.ears = ears;
		this.urgency = urgency;
		this.turns = turns;
		this.farewells = farewells;
		this.looking = looking;
		this.picture = picture;
		this.homeTalk = homeTalk;
	}

	@Override
	public void handle(IncomingMessage message) {
		Speaking.as(this.speechTalk.speechOf(message.chatId()), () -> take(message));
	}

	private void take(IncomingMessage message) {
		Reply reply = reply(message);
		boolean joins = message.text().strip().startsWith("/start");
		Optional<String> toStaff = joins ? Optional.empty()
				: this.staffReplies.answer(message.chatId(), message.senderName(), message.text());
		if (toStaff.isPresent()) {
			toStaff.filter((text) -> !text.isEmpty()).ifPresent(reply::say);
		}
		else if (message.text().strip().startsWith("/")) {
			this.commands.run(message, reply);
		}
		else if (message.wordless()) {
			wordless(message, reply);
		}
		else {
			words(message, reply);
		}
	}

	@Override
	public void apologise(IncomingMessage message) {
		Reply reply = new Reply(this.outbox, this.replies, message.chatId(), "sorry/" + message.id());
		Speaking.as(this.speechTalk.speechOf(message.chatId()), () -> reply.say(Phrase.APOLOGY));
	}

	private Reply reply(IncomingMessage message) {
		return new Reply(this.outbox, this.replies, message.chatId(), "in/" + message.id());
	}

	/**
	 * The bot can neither hear nor see; it says so, but not to somebody who wants no
	 * messages.
	 */
	private void wordless(IncomingMessage message, Reply reply) {
		List<Turn> dogs = this.turns.of(message);
		if (!dogs.isEmpty() && Pictures.brings(message)) {
			this.homeTalk.see(dogs, reply);
		}
		else if (this.households.carerIn(message.chatId()).filter(Carer::silenced).isEmpty()) {
			reply.say(message.spoken() ? Phrase.CANNOT_LISTEN : Phrase.CANNOT_SEE);
		}
	}

	private void words(IncomingMessage message, Reply reply) {
		List<Turn> dogs = this.turns.of(message);
		if (dogs.isEmpty()) {
			stranger(message, reply);
		}
		else if (!this.farewells.answered(dogs, reply) && !this.speechTalk.answered(dogs.get(0), reply)
				&& !this.looking.answered(dogs.get(0), reply) && !this.picture.unwished(dogs.get(0), reply)) {
			this.homeTalk.hear(dogs, reply);
		}
	}

	private void stranger(IncomingMessage message, Reply reply) {
		if (this.speechTalk.chosenByNewcomer(message.chatId(), message.text(), reply)) {
			return;
		}
		Reading reading = this.ears.stranger(message.text(),
				LocalDateTime.ofInstant(message.receivedAt(), ZoneOffset.UTC));
		if (Urgency.cannotWait(reading)) {
			this.urgency.answer(this.replies.part(Part.YOUR_DOG), reading, reply);
		}
		else {
			this.setUp.take(message, reading, reply);
		}
	}

}

package measuredwalk.care;

import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import measuredwalk.conversations.CheckIn;
import measuredwalk.conversations.CheckIns;
import measuredwalk.conversations.Phrase;
import measuredwalk.conversations.Replies;
import measuredwalk.escalation.StaffReplies;
import measuredwalk.household.Carer;
import measuredwalk.household.Dog;
import measuredwalk.household.Households;
import measuredwalk.journal.JournalEntry;
import measuredwalk.journal.Note;
import measuredwalk.journal.NoteTopic;
import measuredwalk.journal.Notes;
import measuredwalk.journal.WalkEntry;
import measuredwalk.messaging.IncomingHandler;
import measuredwalk.messaging.IncomingMessage;
import measuredwalk.messaging.Outbox;
import measuredwalk.reading.Correction;
import measuredwalk.reading.Reading;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

/** What a message causes, from the first look at it to the last answer. */
@Component
class Story implements IncomingHandler {

	private final Households households;

	private final CheckIns checkIns;

	private final Outbox outbox;

	private final Replies replies;

	private final Commands commands;

	private final SetUp setUp;

	private final Ears ears;

	private final Urgency urgency;

	private final CheckInTalk talk;

	private final SmallTalk smallTalk;

	private final Corrections corrections;

	private final EntryWriter writer;

	private final EntryWords words;

	private final SuggestionWords suggestions;

	private final AskBacks askBacks;

	private final FirstDragging dragging;

	private final WhatIf whatIf;

	private final StaffReplies staffReplies;

	private final WeeklyQuestion weekly;

	private final Notes notes;

	private final HoursTalk hours;

	private final Erasing erasing;

	private final Leaving leaving;

	private final SameWalk sameWalk;

	Story(Households households, CheckIns checkIns, Outbox outbox, Replies replies, Commands commands, SetUp setUp,
			Ears ears, Urgency urgency, CheckInTalk talk, SmallTalk smallTalk, Corrections corrections,
			EntryWriter writer, EntryWords words, SuggestionWords suggestions, AskBacks askBacks,
			FirstDragging dragging, WhatIf whatIf, StaffReplies staffReplies, WeeklyQuestion weekly, Notes notes,
			HoursTalk hours, Erasing erasing, Leaving leaving, SameWalk sameWalk) {
		this.staffReplies = staffReplies;
		this.households = households;
		this.checkIns = checkIns;
		this.outbox = outbox;
		this.replies = replies;
		this.commands = commands;
		this.setUp = setUp;
		this.ears = ears;
		this.urgency = urgency;
		this.talk = talk;
		this.smallTalk = smallTalk;
		this.corrections = corrections;
		this.writer = writer;
		this.words = words;
		this.suggestions = suggestions;
		this.askBacks = askBacks;
		this.dragging = dragging;
		this.whatIf = whatIf;
		this.weekly = weekly;
		this.notes = notes;
		this.hours = hours;
		this.erasing = erasing;
		this.leaving = leaving;
		this.sameWalk = sameWalk;
	}

	@Override
	public void handle(IncomingMessage message) {
		Reply reply = reply(message);
		boolean joins = message.text().strip().startsWith("/start");
		Optional<String> toStaff = joins ? Optional.empty()
				: this.staffReplies.answer(message.chatId(), message.senderName(), message.text());
		if (toStaff.isPresent()) {
			toStaff.filter((text) -> !text.isEmpty()).ifPresent(reply::say);
			return;
		}
		if (message.text().strip().startsWith("/")) {
			this.commands.run(message, reply);
			return;
		}
		if (message.wordless()) {
			wordless(message, reply);
			return;
		}
		this.households.carerIn(message.chatId())
			.ifPresentOrElse((carer) -> handle(message, carer, reply), () -> stranger(message, reply));
	}

	@Override
	public void apologise(IncomingMessage message) {
		new Reply(this.outbox, this.replies, message.chatId(), "sorry/" + message.id()).say(Phrase.APOLOGY);
	}

	private Reply reply(IncomingMessage message) {
		return new Reply(this.outbox, this.replies, message.chatId(), "in/" + message.id());
	}

	/**
	 * The bot can neither hear nor see; it says so, but not to somebody who wants no
	 * messages.
	 */
	private void wordless(IncomingMessage message, Reply reply) {
		if (this.households.carerIn(message.chatId()).filter(Carer::silenced).isEmpty()) {
			reply.say(message.spoken() ? Phrase.CANNOT_LISTEN : Phrase.CANNOT_SEE);
		}
	}

	private void stranger(IncomingMessage message, Reply reply) {
		Reading reading = this.ears.stranger(message.text(),
				LocalDateTime.ofInstant(message.receivedAt(), ZoneOffset.UTC));
		if (Urgency.cannotWait(reading)) {
			this.urgency.answer("your dog", reading, reply);
		}
		else {
			this.setUp.take(message, reading, reply);
		}
	}

	private void handle(IncomingMessage message, Carer carer, Reply reply) {
		Dog dog = this.households.dogsOf(carer.householdId()).get(0);
		Turn turn = new Turn(message, carer, dog);
		if (this.erasing.answered(turn, reply) || this.leaving.answered(turn, reply)) {
			return;
		}
		CheckIn open = this.checkIns.current(message.chatId()).orElse(null);
		Reading reading = this.ears.read(turn, open);
		if (Urgency.cannotWait(reading)) {
			this.writer.write(turn, reading, open);
			this.urgency.answer(turn, reading, reply);
		}
		else if (carer.silenced()) {
			this.writer.write(turn, reading, open);
		}
		else if (!this.weekly.answered(turn, reading, open, reply)) {
			converse(turn, reading, WeeklyQuestion.isOpen(open) ? null : open, reply);
		}
	}

	private void converse(Turn turn, Reading reading, @Nullable CheckIn open, Reply reply) {
		if (this.hours.answered(turn, reply) || this.sameWalk.answered(turn, open, reply)
				|| this.dragging.answered(turn, open, reply) || this.whatIf.answered(turn, reply)
				|| saysNoWalk(turn, reading, open, reply)) {
			return;
		}
		Optional<Correction> correction = this.askBacks.answered(reading, open).or(() -> correction(reading));
		Optional<JournalEntry> changed = correction.flatMap((each) -> this.corrections.apply(turn, each, open));
		if (changed.isPresent()) {
			reply.say(Phrase.CHANGED, Map.of("entry", this.words.entry(changed.get(), turn.today())));
			goOnAfterChange(turn, open, reply);
		}
		else {
			facts(turn, reading, open, reply);
		}
	}

	private void facts(Turn turn, Reading reading, @Nullable CheckIn open, Reply reply) {
		boolean firstDragging = this.dragging.isFirst(turn, reading);
		Optional<WalkEntry> other = this.sameWalk.perhaps(turn, reading);
		if (firstDragging || other.isPresent()) {
			reply.holdQuestions();
		}
		if (!this.talk.take(turn, reading, open, reply)) {
			noFacts(turn, reading, open, reply);
		}
		else if (firstDragging) {
			this.dragging.ask(turn, reply);
		}
		else if (other.isPresent()) {
			this.sameWalk.ask(turn, other.get(), reply);
		}
		else {
			this.askBacks.askIfUnsure(turn, reading, reply);
		}
	}

	/** 'No walk today' answers a check-in about a walk that nothing was told of yet. */
	private boolean saysNoWalk(Turn turn, Reading reading, @Nullable CheckIn open, Reply reply) {
		if (!reading.noWalk() || !reading.walks().isEmpty() || !reading.signs().isEmpty()) {
			return false;
		}
		if (open != null && open.conversation().equals(CheckIns.AFTER_WALK) && open.entryId() == null) {
			this.checkIns.close(turn.chatId());
		}
		else {
			this.notes.keep(turn.dog().id(), new Note(NoteTopic.NO_WALK, turn.today(), turn.said()));
		}
		reply.say(Phrase.NO_WALK);
		return true;
	}

	private static Optional<Correction> correction(Reading reading) {
		return Optional.ofNullable(reading.correction());
	}

	private void goOnAfterChange(Turn turn, @Nullable CheckIn open, Reply reply) {
		if (open == null || open.asked().isEmpty()) {
			reply.say(this.suggestions.today(turn.dog()));
		}
		else {
			this.checkIns.waiting(open.id(), Map.of("dog", turn.dog().name())).ifPresent(reply::ask);
		}
	}

	private void noFacts(Turn turn, Reading reading, @Nullable CheckIn open, Reply reply) {
		if (open == null) {
			this.smallTalk.answer(turn, reading, reply);
		}
		else {
			this.smallTalk.answerInside(turn, reading, open, reply);
			this.talk.goOn(turn, open, Set.of(), reply);
		}
	}

}

package measuredwalk.care;

import java.time.LocalDate;
import java.util.EnumSet;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;

import measuredwalk.conversations.CheckIn;
import measuredwalk.conversations.CheckIns;
import measuredwalk.conversations.Circumstance;
import measuredwalk.conversations.Phrase;
import measuredwalk.conversations.Prompt;
import measuredwalk.conversations.SettledBy;
import measuredwalk.conversations.Slot;
import measuredwalk.journal.Journal;
import measuredwalk.journal.WalkEntry;
import measuredwalk.reading.Reading;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

/**
 * Takes a message into the check-in that is open, or begins the one that it answers:
 * writes it down, asks what is still open, and at the end says what was written and what
 * follows.
 */
@Component
class CheckInTalk {

	private static final String SUGGESTED = "suggested";

	private final CheckIns checkIns;

	private final Ears ears;

	private final EntryWriter writer;

	private final EntryWords words;

	private final SuggestionWords suggestions;

	private final Journal journal;

	private final OtherChats otherChats;

	private final GentleIdeas ideas;

	CheckInTalk(CheckIns checkIns, Ears ears, EntryWriter writer, EntryWords words, SuggestionWords suggestions,
			Journal journal, OtherChats otherChats, GentleIdeas ideas) {
		this.checkIns = checkIns;
		this.ears = ears;
		this.writer = writer;
		this.words = words;
		this.suggestions = suggestions;
		this.journal = journal;
		this.otherChats = otherChats;
		this.ideas = ideas;
	}

	/** Begins a check-in and asks its first question. */
	void begin(Turn turn, String conversation, Reply reply) {
		CheckIn checkIn = this.checkIns.open(turn.chatId(), turn.dog().id(), conversation, turn.today());
		ask(turn, checkIn, Set.of()).ifPresent(reply::ask);
	}

	/**
	 * Takes a message that brings facts, or an answer to what was asked.
	 * @return false when it brought nothing at all
	 */
	boolean take(Turn turn, Reading reading, @Nullable CheckIn open, Reply reply) {
		Optional<Onset> onset = (open != null) ? this.ears.onset(turn, open) : Optional.empty();
		if (onset.isPresent() && reading.signs().isEmpty()) {
			this.writer.begun(turn, Objects.requireNonNull(open), onset.get());
			goOn(turn, Objects.requireNonNull(open), EnumSet.of(Slot.ONSET), reply);
			return true;
		}
		Written written = this.writer.write(turn, reading, open);
		this.otherChats.told(turn, written);
		boolean aboutWalk = (open != null) ? open.conversation().equals(CheckIns.AFTER_WALK) : written.aboutWalk();
		Set<Slot> settled = SettledBy.reading(reading, (open != null) ? open.asked() : Set.of(), aboutWalk);
		if (open != null) {
			return takeInto(turn, open, written, settled, reply);
		}
		if (written.nothing()) {
			return false;
		}
		open(turn, written, settled, reply);
		return true;
	}

	private boolean takeInto(Turn turn, CheckIn open, Written written, Set<Slot> settled, Reply reply) {
		if (settled.isEmpty() && written.nothing()) {
			return false;
		}
		boolean wholeStory = written.newWalk() && wholeStory(written);
		if (wholeStory || (written.newWalk() && anotherWalk(open, written))) {
			reply.say(Phrase.WRITTEN_DOWN, Map.of("entry", turn.named(this.words.written(written, turn.today()))));
		}
		linkEntry(open, written);
		goOn(turn, open, settled, reply);
		if (wholeStory) {
			this.checkIns.current(turn.chatId()).ifPresent((checkIn) -> suggest(turn, checkIn, reply));
		}
		return true;
	}

	/**
	 * A walk told with how it went is answered as one out of the blue is, asked for or
	 * not.
	 */
	private static boolean wholeStory(Written written) {
		WalkEntry walk = written.lastWalk();
		return walk != null && (!walk.facts().signs().isEmpty() || walk.facts().overall() != null);
	}

	/**
	 * A walk that is not the one that the check-in is about deserves a word of its own.
	 */
	private static boolean anotherWalk(CheckIn open, Written written) {
		boolean aboutWalk = open.conversation().equals(CheckIns.AFTER_WALK);
		WalkEntry walk = written.lastWalk();
		return !aboutWalk || (open.entryId() != null && walk != null && !walk.id().equals(open.entryId()));
	}

	private void linkEntry(CheckIn open, Written written) {
		WalkEntry walk = written.lastWalk();
		if (walk != null && open.conversation().equals(CheckIns.AFTER_WALK)) {
			this.checkIns.writesTo(open.id(), walk.id());
		}
	}

	/** A remark out of the blue answers all the questions that it answers. */
	private void open(Turn turn, Written written, Set<Slot> settled, Reply reply) {
		String conversation = written.aboutWalk() ? CheckIns.AFTER_WALK : CheckIns.NEXT_MORNING;
		reply.say(Phrase.WRITTEN_DOWN, Map.of("entry", turn.named(this.words.written(written, turn.today()))));
		sayIfJoined(turn, written, reply);
		boolean addsToFinished = addsToFinished(turn, written, conversation);
		CheckIn checkIn = this.checkIns.open(turn.chatId(), turn.dog().id(), conversation, aboutDate(turn, written));
		linkEntry(checkIn, written);
		Optional<Prompt> question = addsToFinished ? Optional.empty() : ask(turn, withEntry(checkIn), settled);
		question.ifPresent(reply::ask);
		if (addsToFinished) {
			this.checkIns.close(turn.chatId());
		}
		suggest(turn, checkIn, reply);
	}

	/** A walk that another carer told of first was kept as one. */
	private static void sayIfJoined(Turn turn, Written written, Reply reply) {
		WalkEntry walk = written.lastWalk();
		if (written.newWalk() && walk != null && !walk.reportedBy().carerId().equals(turn.carer().id())) {
			reply.say(Phrase.SAME_WALK_JOINED, Map.of("carer", walk.reportedBy().name()));
		}
	}

	/**
	 * More words about a walk or a morning whose check-in is over do not begin another.
	 */
	private boolean addsToFinished(Turn turn, Written written, String conversation) {
		if (written.aboutWalk()) {
			return !written.newWalk();
		}
		return this.checkIns.held(turn.dog().id(), conversation, turn.today());
	}

	private static LocalDate aboutDate(Turn turn, Written written) {
		WalkEntry walk = written.lastWalk();
		return (walk != null) ? walk.facts().date() : turn.today();
	}

	private CheckIn withEntry(CheckIn checkIn) {
		return this.checkIns.current(checkIn.chatId()).orElse(checkIn);
	}

	/** Asks what is still open, or ends the check-in. */
	void goOn(Turn turn, CheckIn open, Set<Slot> settled, Reply reply) {
		CheckIn checkIn = withEntry(open);
		Optional<Prompt> question = ask(turn, checkIn, settled);
		question.ifPresentOrElse(reply::ask, () -> finish(turn, checkIn, reply));
	}

	private Optional<Prompt> ask(Turn turn, CheckIn checkIn, Set<Slot> settled) {
		Set<Circumstance> circumstances = EnumSet.noneOf(Circumstance.class);
		if (this.writer.anyBeganUnknown(checkIn)) {
			circumstances.add(Circumstance.SIGN_WITHOUT_ONSET);
		}
		if (this.writer.stiffWithoutMinutes(turn, checkIn)) {
			circumstances.add(Circumstance.STIFF_WITHOUT_MINUTES);
		}
		return this.checkIns.next(checkIn.id(), settled, circumstances, Map.of("dog", turn.dog().name()));
	}

	private void finish(Turn turn, CheckIn checkIn, Reply reply) {
		entryLine(turn, checkIn)
			.ifPresent((entry) -> reply.say(Phrase.CHECK_IN_DONE, Map.of("entry", turn.named(entry))));
		suggest(turn, checkIn, reply);
	}

	private Optional<String> entryLine(Turn turn, CheckIn checkIn) {
		if (checkIn.conversation().equals(CheckIns.NEXT_MORNING)) {
			return this.journal.morningOf(turn.dog().id(), checkIn.aboutDate())
				.map((morning) -> this.words.morning(morning.facts(), turn.today()));
		}
		return Optional.ofNullable(checkIn.entryId())
			.flatMap(this.journal::walk)
			.map((walk) -> this.words.walk(walk.facts(), turn.today()));
	}

	/** Says what follows for today, unless this check-in has said the same already. */
	private void suggest(Turn turn, CheckIn checkIn, Reply reply) {
		String suggestion = turn.named(this.suggestions.today(turn.dog()));
		if (!suggestion.equals(checkIn.remembered().get(SUGGESTED))) {
			reply.say(suggestion);
			this.checkIns.remember(checkIn.id(), SUGGESTED, suggestion);
			this.ideas.sayIfWalksAreCut(turn);
		}
	}

}

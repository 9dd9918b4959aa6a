package measuredwalk.care;

import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

import measuredwalk.conversations.CheckIn;
import measuredwalk.conversations.CheckIns;
import measuredwalk.conversations.Phrase;
import measuredwalk.journal.JournalEntry;
import measuredwalk.journal.Note;
import measuredwalk.journal.NoteTopic;
import measuredwalk.journal.Notes;
import measuredwalk.journal.WalkEntry;
import measuredwalk.reading.Correction;
import measuredwalk.reading.Reading;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

/** What words about one dog cause, in the conversation that is open about it. */
@Component
class DogTalk {

	/** 'No walk' answers for one walk, 'no walk today' for all of the day. */
	private static final Pattern ALL_DAY = Pattern.compile("\\b(?:today|all day)\\b", Pattern.CASE_INSENSITIVE);

	private final CheckIns checkIns;

	private final AskedBefore asked;

	private final CheckInTalk talk;

	private final SmallTalk smallTalk;

	private final Corrections corrections;

	private final EntryWords words;

	private final SuggestionWords suggestions;

	private final AskBacks askBacks;

	private final FirstDragging dragging;

	private final SameWalk sameWalk;

	private final LookingTalk looking;

	private final Notes notes;

	private final WalkLoads loads;

	DogTalk(CheckIns checkIns, AskedBefore asked, CheckInTalk talk, SmallTalk smallTalk, Corrections corrections,
			EntryWords words, SuggestionWords suggestions, AskBacks askBacks, FirstDragging dragging, SameWalk sameWalk,
			LookingTalk looking, Notes notes, WalkLoads loads) {
		this.loads = loads;
		this.checkIns = checkIns;
		this.asked = asked;
		this.talk = talk;
		this.smallTalk = smallTalk;
		this.corrections = corrections;
		this.words = words;
		this.suggestions = suggestions;
		this.askBacks = askBacks;
		this.dragging = dragging;
		this.sameWalk = sameWalk;
		this.looking = looking;
		this.notes = notes;
	}

	void converse(Turn turn, Reading reading, @Nullable CheckIn open, Reply reply) {
		if (this.asked.answered(turn, open, reply) || saysNoWalk(turn, reading, open, reply)) {
			return;
		}
		Optional<Correction> correction = this.askBacks.answered(reading, open)
			.or(() -> Optional.ofNullable(reading.correction()));
		boolean changed = (correction.isPresent() && corrected(turn, correction.get(), open, reply))
				|| sayIfChanged(turn, this.loads.putRight(turn, reading, open), reply);
		if (changed) {
			goOnAfterChange(turn, open, reply);
		}
		else {
			facts(turn, reading, open, reply);
		}
	}

	/** Says what an entry says now that it is put right. */
	boolean corrected(Turn turn, Correction correction, @Nullable CheckIn open, Reply reply) {
		return sayIfChanged(turn, this.corrections.apply(turn, correction, open), reply);
	}

	private boolean sayIfChanged(Turn turn, Optional<JournalEntry> changed, Reply reply) {
		changed.ifPresent((entry) -> reply.say(Phrase.CHANGED,
				Map.of("entry", turn.named(this.words.entry(entry, turn.today())))));
		return changed.isPresent();
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
			this.looking.offerOnce(turn, reading);
		}
	}

	/** 'No walk today' answers a check-in about a walk that nothing was told of yet. */
	boolean saysNoWalk(Turn turn, Reading reading, @Nullable CheckIn open, Reply reply) {
		if (!reading.noWalk() || !reading.walks().isEmpty() || !reading.signs().isEmpty()) {
			return false;
		}
		boolean answers = open != null && open.conversation().equals(CheckIns.AFTER_WALK) && open.entryId() == null;
		if (answers) {
			this.checkIns.close(turn.chatId());
		}
		if (!answers || ALL_DAY.matcher(turn.english()).find()) {
			this.notes.keep(turn.dog().id(), new Note(NoteTopic.NO_WALK, turn.today(), turn.said()));
		}
		reply.say(Phrase.NO_WALK);
		return true;
	}

	private void goOnAfterChange(Turn turn, @Nullable CheckIn open, Reply reply) {
		if (open == null || open.asked().isEmpty()) {
			reply.say(turn.named(this.suggestions.today(turn.dog())));
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

package measuredwalk.care;

import java.util.Comparator;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;

import measuredwalk.conversations.CheckIns;
import measuredwalk.conversations.Phrase;
import measuredwalk.household.Dog;
import measuredwalk.journal.Journal;
import measuredwalk.journal.JournalEntry;
import measuredwalk.journal.MorningEntry;
import measuredwalk.journal.WalkEntry;
import org.springframework.stereotype.Component;

/** {@code /undo}: takes back a carer's last entry, whichever dog it is about. */
@Component
class TakingBack {

	private final Journal journal;

	private final Turns turns;

	private final CheckIns checkIns;

	private final EntryWords words;

	private final SuggestionWords suggestions;

	TakingBack(Journal journal, Turns turns, CheckIns checkIns, EntryWords words, SuggestionWords suggestions) {
		this.journal = journal;
		this.turns = turns;
		this.checkIns = checkIns;
		this.words = words;
		this.suggestions = suggestions;
	}

	void undo(Turn turn, Reply reply) {
		Optional<Turn> last = this.turns.of(turn.message())
			.stream()
			.filter((each) -> this.journal.lastOf(each.teller()).isPresent())
			.max(Comparator.comparing((Turn each) -> at(this.journal.lastOf(each.teller()).orElseThrow())));
		Optional<JournalEntry> undone = last
			.flatMap((each) -> this.journal.undoLast(each.teller(), turn.message().receivedAt()));
		if (undone.isEmpty()) {
			reply.say(Phrase.NOTHING_TO_TAKE_BACK);
			return;
		}
		this.checkIns.close(turn.chatId());
		say(about(turn, dogOf(undone.get())), undone.get(), reply);
	}

	private static Turn about(Turn turn, UUID dogId) {
		return turn.dogs()
			.stream()
			.filter((Dog dog) -> dog.id().equals(dogId))
			.findFirst()
			.map(turn::about)
			.orElse(turn);
	}

	private void say(Turn turn, JournalEntry undone, Reply reply) {
		reply.say(Phrase.TAKEN_BACK, Map.of("entry", turn.named(this.words.entry(undone, turn.today()))));
		reply.say(turn.named(this.suggestions.today(turn.dog())));
	}

	private static java.time.Instant at(JournalEntry entry) {
		return entry.asWalk()
			.map(WalkEntry::reportedAt)
			.orElseGet(() -> entry.asMorning().map(MorningEntry::reportedAt).orElseThrow());
	}

	private static UUID dogOf(JournalEntry entry) {
		return entry.asWalk()
			.map(WalkEntry::dogId)
			.orElseGet(() -> entry.asMorning().map(MorningEntry::dogId).orElseThrow());
	}

}

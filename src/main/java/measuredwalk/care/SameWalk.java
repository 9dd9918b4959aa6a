package measuredwalk.care;

import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

import measuredwalk.amounts.WalkAmount;
import measuredwalk.conversations.CheckIn;
import measuredwalk.conversations.CheckIns;
import measuredwalk.conversations.Part;
import measuredwalk.conversations.Phrase;
import measuredwalk.conversations.Replies;
import measuredwalk.journal.Journal;
import measuredwalk.journal.JournalEntry;
import measuredwalk.journal.WalkEntry;
import measuredwalk.journal.WalkFacts;
import measuredwalk.messaging.Outbox;
import measuredwalk.reading.Reading;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

/** Asks once whether a walk is the one that another carer told of. */
@Component
class SameWalk {

	private final Journal journal;

	private final WalkAmount amounts;

	private final CheckIns checkIns;

	private final Outbox outbox;

	private final Replies replies;

	private final Figures figures;

	SameWalk(Journal journal, WalkAmount amounts, CheckIns checkIns, Outbox outbox, Replies replies, Figures figures) {
		this.figures = figures;
		this.journal = journal;
		this.amounts = amounts;
		this.checkIns = checkIns;
		this.outbox = outbox;
		this.replies = replies;
	}

	/**
	 * The walk of another carer that a message may tell of; looked for before it is
	 * written.
	 */
	Optional<WalkEntry> perhaps(Turn turn, Reading reading) {
		if (reading.walks().size() != 1) {
			return Optional.empty();
		}
		WalkFacts facts = this.amounts.facts(turn.dog(), turn.today(), reading.walks().get(0));
		Instant at = turn.message().receivedAt();
		List<WalkEntry> others = ofOthers(turn);
		if (others.stream().anyMatch((walk) -> TwinWalk.plainly(walk, facts, at))) {
			return Optional.empty();
		}
		return others.stream()
			.filter((walk) -> TwinWalk.perhaps(walk, facts, at))
			.max(Comparator.comparing(WalkEntry::reportedAt));
	}

	private List<WalkEntry> ofOthers(Turn turn) {
		return this.journal.walks(turn.dog().id())
			.stream()
			.filter((walk) -> !walk.reportedBy().carerId().equals(turn.carer().id()))
			.toList();
	}

	void ask(Turn turn, WalkEntry other, Reply reply) {
		reply.ask(Phrase.SAME_WALK, places(turn, other),
				List.of(this.replies.part(Part.SAME_WALK), this.replies.part(Part.ANOTHER_WALK)));
	}

	private Map<String, String> places(Turn turn, WalkEntry other) {
		Double minutes = other.facts().minutes();
		String amount = (minutes != null) ? this.replies.part(Part.OF_MINUTES, this.figures.minutes(minutes)) : "";
		return Map.of("dog", turn.dog().name(), "carer", other.reportedBy().name(), "minutes", amount);
	}

	/**
	 * Takes the answer, if this was asked last.
	 * @return true when it was the answer
	 */
	boolean answered(Turn turn, @Nullable CheckIn open, Reply reply) {
		String text = turn.english().strip().toLowerCase(Locale.ROOT);
		boolean same = text.startsWith("yes") || text.startsWith("the same");
		if (!same && !text.startsWith("no")) {
			return false;
		}
		Optional<WalkEntry> mine = this.journal.lastOf(turn.teller()).flatMap(JournalEntry::asWalk);
		Optional<WalkEntry> other = mine.flatMap((walk) -> askedAbout(turn, walk));
		if (mine.isEmpty() || other.isEmpty()) {
			return false;
		}
		if (same) {
			join(turn, other.get(), mine.get(), open);
		}
		reply.say(same ? Phrase.SAME_WALK_JOINED : Phrase.SAME_WALK_APART, places(turn, other.get()));
		Optional.ofNullable(open)
			.flatMap((checkIn) -> this.checkIns.waiting(checkIn.id(), Map.of("dog", turn.dog().name())))
			.ifPresent(reply::ask);
		return true;
	}

	private Optional<WalkEntry> askedAbout(Turn turn, WalkEntry mine) {
		String last = this.outbox.lastText(turn.chatId()).orElse("");
		Instant at = mine.reportedAt();
		return ofOthers(turn).stream()
			.filter((walk) -> TwinWalk.perhaps(walk, mine.facts(), at))
			.filter((walk) -> last.equals(this.replies.say(Phrase.SAME_WALK, places(turn, walk))))
			.findFirst();
	}

	private void join(Turn turn, WalkEntry first, WalkEntry second, @Nullable CheckIn open) {
		this.journal.undo(second.id(), turn.carer().name(), turn.message().receivedAt());
		this.journal.replace(first.id(), TwinWalk.together(first.facts(), second.facts()),
				second.said().get(second.said().size() - 1));
		if (open != null && second.id().equals(open.entryId())) {
			this.checkIns.writesTo(open.id(), first.id());
		}
	}

}

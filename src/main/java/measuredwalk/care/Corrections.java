package measuredwalk.care;

import java.time.Instant;
import java.util.Comparator;
import java.util.Optional;

import measuredwalk.conversations.CheckIn;
import measuredwalk.journal.Journal;
import measuredwalk.journal.JournalEntry;
import measuredwalk.journal.MorningEntry;
import measuredwalk.journal.MorningFacts;
import measuredwalk.journal.WalkEntry;
import measuredwalk.journal.WalkFacts;
import measuredwalk.reading.Correction;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

/**
 * Puts right what a correction names in the entry that it speaks of, and nothing else.
 */
@Component
class Corrections {

	/** 'Not 50' may mean a stored 50.4. */
	private static final double SAME_MINUTES = 1.0;

	private final Journal journal;

	Corrections(Journal journal) {
		this.journal = journal;
	}

	Optional<JournalEntry> apply(Turn turn, Correction correction, @Nullable CheckIn checkIn) {
		Optional<WalkEntry> named = walkOf(turn, correction.wrongMinutes());
		if (named.isPresent()) {
			return named.map((walk) -> correct(turn, walk, correction));
		}
		Optional<WalkEntry> running = Optional.ofNullable(checkIn).map(CheckIn::entryId).flatMap(this.journal::walk);
		if (running.isPresent()) {
			return running.map((walk) -> correct(turn, walk, correction));
		}
		Optional<JournalEntry> last = last(turn);
		return last.flatMap(JournalEntry::asWalk)
			.map((walk) -> correct(turn, walk, correction))
			.or(() -> last.flatMap(JournalEntry::asMorning).flatMap((morning) -> correct(turn, morning, correction)));
	}

	/** What this carer told of last about this dog. */
	private Optional<JournalEntry> last(Turn turn) {
		Optional<WalkEntry> walk = lastWalk(turn);
		Optional<MorningEntry> morning = lastMorning(turn);
		boolean walkIsLater = walk.isPresent()
				&& (morning.isEmpty() || !morning.get().reportedAt().isAfter(walk.get().reportedAt()));
		return walkIsLater ? walk.map((entry) -> new JournalEntry(entry, null))
				: morning.map((entry) -> new JournalEntry(null, entry));
	}

	private Optional<WalkEntry> lastWalk(Turn turn) {
		return this.journal.walks(turn.dog().id())
			.stream()
			.filter((walk) -> walk.reportedBy().carerId().equals(turn.carer().id()))
			.reduce((one, next) -> next.reportedAt().isBefore(one.reportedAt()) ? one : next);
	}

	private Optional<MorningEntry> lastMorning(Turn turn) {
		return this.journal.mornings(turn.dog().id())
			.stream()
			.filter((morning) -> morning.reportedBy().carerId().equals(turn.carer().id()))
			.reduce((one, next) -> next.reportedAt().isBefore(one.reportedAt()) ? one : next);
	}

	/** When this carer told of this dog last, of what counts. */
	Optional<Instant> lastTold(Turn turn) {
		return last(turn).map((entry) -> entry.asWalk()
			.map(WalkEntry::reportedAt)
			.orElseGet(() -> entry.asMorning().orElseThrow().reportedAt()));
	}

	/** Whether this carer's last walk of this dog has these minutes. */
	boolean told(Turn turn, double minutes) {
		return lastWalk(turn).filter((walk) -> hasMinutes(walk, minutes)).isPresent();
	}

	/** The latest walk that has the minutes that were wrong. */
	private Optional<WalkEntry> walkOf(Turn turn, @Nullable Double wrongMinutes) {
		if (wrongMinutes == null) {
			return Optional.empty();
		}
		return this.journal.walks(turn.dog().id())
			.stream()
			.filter((walk) -> hasMinutes(walk, wrongMinutes))
			.max(Comparator.comparing(WalkEntry::reportedAt));
	}

	private static boolean hasMinutes(WalkEntry walk, double minutes) {
		Double told = walk.facts().minutes();
		return told != null && Math.abs(told - minutes) < SAME_MINUTES;
	}

	private JournalEntry correct(Turn turn, WalkEntry walk, Correction correction) {
		WalkFacts facts = walk.facts();
		if (correction.minutes() != null) {
			facts = facts.withMinutes(correction.minutes());
		}
		if (correction.distanceMetres() != null) {
			facts = facts.withDistance(correction.distanceMetres());
		}
		if (correction.side() != null || correction.limb() != null) {
			facts = facts.withSigns(SignsTold.withLeg(facts.signs(), correction.side(), correction.limb()));
		}
		return new JournalEntry(this.journal.replace(walk.id(), facts, turn.said()), null);
	}

	private Optional<JournalEntry> correct(Turn turn, MorningEntry morning, Correction correction) {
		if (correction.side() == null && correction.limb() == null) {
			return Optional.empty();
		}
		MorningFacts facts = morning.facts()
			.withSigns(SignsTold.withLeg(morning.facts().signs(), correction.side(), correction.limb()));
		return Optional.of(new JournalEntry(null, this.journal.replaceMorning(morning.id(), facts, turn.said())));
	}

}

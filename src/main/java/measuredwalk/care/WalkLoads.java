package measuredwalk.care;

import java.time.Duration;
import java.time.Instant;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

import measuredwalk.conversations.CheckIn;
import measuredwalk.conversations.CheckIns;
import measuredwalk.conversations.Slot;
import measuredwalk.journal.Journal;
import measuredwalk.journal.JournalEntry;
import measuredwalk.journal.WalkEntry;
import measuredwalk.reading.LoadTold;
import measuredwalk.reading.Reading;
import measuredwalk.signs.LoadKind;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

/**
 * What made a walk harder, put with the walk that it was told of. Where it is not plain
 * which walk is meant, it is left out.
 */
@Component
class WalkLoads {

	/** So long after a walk was told words alone may still be about it. */
	private static final Duration STILL_ABOUT_IT = Duration.ofHours(2);

	private final Journal journal;

	WalkLoads(Journal journal) {
		this.journal = journal;
	}

	/** The loads of the walk that is talked of, with what an answer adds and denies. */
	static Set<LoadKind> after(Set<LoadKind> before, Reading reading, @Nullable CheckIn checkIn) {
		return isAboutWalk(checkIn) ? changed(before, reading.loads()) : before;
	}

	/** 'How is it now?' is not about the walk any more: the stairs are those at home. */
	private static boolean isAboutWalk(@Nullable CheckIn checkIn) {
		return checkIn != null && checkIn.conversation().equals(CheckIns.AFTER_WALK)
				&& !Ears.asks(checkIn, Slot.OVERALL);
	}

	private static Set<LoadKind> changed(Set<LoadKind> before, List<LoadTold> told) {
		Set<LoadKind> loads = EnumSet.noneOf(LoadKind.class);
		loads.addAll(before);
		told.forEach((each) -> {
			if (each.present()) {
				loads.add(each.kind());
			}
			else {
				loads.remove(each.kind());
			}
		});
		return loads;
	}

	/**
	 * Words that tell of nothing but loads are about the walk of the check-in, or about
	 * the one that this carer has just told of.
	 * @return the walk as it stands now, or empty when nothing changes
	 */
	Optional<JournalEntry> putRight(Turn turn, Reading reading, @Nullable CheckIn checkIn) {
		boolean nothingElse = reading.walks().isEmpty() && reading.signs().isEmpty() && reading.overall() == null
				&& reading.stiffMinutes() == null && reading.correction() == null;
		if (!nothingElse || reading.loads().isEmpty()) {
			return Optional.empty();
		}
		Optional<WalkEntry> walk = isAboutWalk(checkIn)
				? Optional.ofNullable(checkIn).map(CheckIn::entryId).flatMap(this.journal::walk) : justTold(turn);
		return walk.filter((entry) -> !loads(entry, reading).equals(entry.facts().loads()))
			.map((entry) -> this.journal.replace(entry.id(), entry.facts().withLoads(loads(entry, reading)),
					turn.said()))
			.map((entry) -> new JournalEntry(entry, null));
	}

	private static Set<LoadKind> loads(WalkEntry entry, Reading reading) {
		return changed(entry.facts().loads(), reading.loads());
	}

	private Optional<WalkEntry> justTold(Turn turn) {
		Instant earliest = turn.message().receivedAt().minus(STILL_ABOUT_IT);
		return this.journal.walks(turn.dog().id())
			.stream()
			.filter((walk) -> walk.reportedBy().carerId().equals(turn.carer().id()))
			.max(Comparator.comparing(WalkEntry::reportedAt))
			.filter((walk) -> !walk.reportedAt().isBefore(earliest));
	}

}

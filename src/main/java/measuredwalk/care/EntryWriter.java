package measuredwalk.care;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;

import measuredwalk.amounts.WalkAmount;
import measuredwalk.conversations.CheckIn;
import measuredwalk.conversations.CheckIns;
import measuredwalk.journal.Journal;
import measuredwalk.journal.MorningEntry;
import measuredwalk.journal.MorningFacts;
import measuredwalk.journal.WalkEntry;
import measuredwalk.journal.WalkFacts;
import measuredwalk.reading.Reading;
import measuredwalk.reading.WalkTold;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

/**
 * Writes what was read into the journal at once; later answers of the same check-in add
 * to the same entry.
 */
@Component
class EntryWriter {

	private final Journal journal;

	private final WalkAmount amounts;

	EntryWriter(Journal journal, WalkAmount amounts) {
		this.journal = journal;
		this.amounts = amounts;
	}

	Written write(Turn turn, Reading reading, @Nullable CheckIn checkIn) {
		Optional<WalkEntry> latest = latestToday(turn);
		SignPlaces places = SignPlaces.of(reading, checkIn, latest.isPresent());
		List<WalkEntry> walks = reading.walks().isEmpty() ? addToWalk(turn, reading, places, checkIn, latest)
				: newWalks(turn, reading, places, checkIn);
		MorningEntry morning = (places.anythingOfMorning() || reading.stiffMinutes() != null)
				? morning(turn, reading, places, morningDate(turn, checkIn)) : null;
		return new Written(walks, morning, !reading.walks().isEmpty());
	}

	/** What was seen belongs to the last walk told of. */
	private List<WalkEntry> newWalks(Turn turn, Reading reading, SignPlaces places, @Nullable CheckIn checkIn) {
		List<WalkEntry> entries = new ArrayList<>();
		for (WalkTold told : reading.walks()) {
			boolean last = entries.size() == reading.walks().size() - 1;
			WalkFacts facts = this.amounts.facts(turn.dog(), turn.today(), told)
				.withUnsure(reading.unsure())
				.withLoads(reading.loadsOf(entries.size()));
			entries.add(write(turn, last ? with(facts, places) : facts, checkIn));
		}
		return entries;
	}

	/** The amount of a walk whose signs were told first goes to the same entry. */
	private WalkEntry write(Turn turn, WalkFacts facts, @Nullable CheckIn checkIn) {
		Optional<WalkEntry> waiting = entryOf(checkIn).filter((entry) -> entry.facts().minutes() == null);
		Optional<WalkEntry> twin = waiting.isEmpty() ? twin(turn, facts) : Optional.empty();
		if (twin.isPresent()) {
			return this.journal.replace(twin.get().id(), TwinWalk.together(twin.get().facts(), facts), turn.said());
		}
		if (waiting.isEmpty()) {
			return this.journal.write(turn.dog().id(), facts, turn.teller(), turn.said());
		}
		WalkFacts before = waiting.get().facts();
		WalkFacts filled = facts.withSigns(SignsTold.together(before.signs(), facts.signs()))
			.withOverall((facts.overall() != null) ? facts.overall() : before.overall())
			.withLoads(TwinWalk.both(before.loads(), facts.loads()));
		return this.journal.replace(waiting.get().id(), filled, turn.said());
	}

	/** The walk of another carer that plainly is this one. */
	private Optional<WalkEntry> twin(Turn turn, WalkFacts facts) {
		return this.journal.walks(turn.dog().id())
			.stream()
			.filter((walk) -> !walk.reportedBy().carerId().equals(turn.carer().id()))
			.filter((walk) -> TwinWalk.plainly(walk, facts, turn.message().receivedAt()))
			.max(Comparator.comparing(WalkEntry::reportedAt));
	}

	private List<WalkEntry> addToWalk(Turn turn, Reading reading, SignPlaces places, @Nullable CheckIn checkIn,
			Optional<WalkEntry> latest) {
		if (!places.anythingOfWalk() && WalkLoads.after(Set.of(), reading, checkIn).isEmpty()) {
			return List.of();
		}
		Optional<WalkEntry> target = entryOf(checkIn).or(() -> latestUnlessAsked(latest, checkIn));
		WalkFacts before = target.map(WalkEntry::facts)
			.orElseGet(() -> new WalkFacts(aboutDate(turn, checkIn), null, null, null, null, null, false, null,
					List.of(), List.of()));
		WalkFacts facts = with(before, places).withLoads(WalkLoads.after(before.loads(), reading, checkIn));
		return List.of(target.map((entry) -> this.journal.replace(entry.id(), facts, turn.said()))
			.orElseGet(() -> this.journal.write(turn.dog().id(), facts, turn.teller(), turn.said())));
	}

	private static WalkFacts with(WalkFacts before, SignPlaces places) {
		return before.withSigns(SignsTold.together(before.signs(), places.walkSigns()))
			.withOverall((places.walkOverall() != null) ? places.walkOverall() : before.overall());
	}

	/** A check-in about a walk never adds to another walk of the day. */
	private static Optional<WalkEntry> latestUnlessAsked(Optional<WalkEntry> latest, @Nullable CheckIn checkIn) {
		boolean asked = checkIn != null && checkIn.conversation().equals(CheckIns.AFTER_WALK);
		return asked ? Optional.empty() : latest;
	}

	private Optional<WalkEntry> entryOf(@Nullable CheckIn checkIn) {
		return Optional.ofNullable(checkIn).map(CheckIn::entryId).flatMap(this.journal::walk);
	}

	private Optional<WalkEntry> latestToday(Turn turn) {
		return this.journal.walks(turn.dog().id())
			.stream()
			.filter((walk) -> walk.facts().date().equals(turn.today()))
			.max(Comparator.comparing(WalkEntry::reportedAt));
	}

	private static LocalDate aboutDate(Turn turn, @Nullable CheckIn checkIn) {
		boolean asked = checkIn != null && checkIn.conversation().equals(CheckIns.AFTER_WALK);
		return asked ? checkIn.aboutDate() : turn.today();
	}

	private static LocalDate morningDate(Turn turn, @Nullable CheckIn checkIn) {
		boolean asked = checkIn != null && checkIn.conversation().equals(CheckIns.NEXT_MORNING);
		return asked ? checkIn.aboutDate() : turn.today();
	}

	private MorningEntry morning(Turn turn, Reading reading, SignPlaces places, LocalDate date) {
		Optional<MorningEntry> target = this.journal.morningOf(turn.dog().id(), date);
		MorningFacts before = target.map(MorningEntry::facts)
			.orElseGet(() -> new MorningFacts(date, null, null, List.of(), List.of()));
		MorningFacts facts = new MorningFacts(date,
				(reading.stiffMinutes() != null) ? reading.stiffMinutes() : before.stiffMinutes(),
				(places.morningOverall() != null) ? places.morningOverall() : before.overall(),
				SignsTold.together(before.signs(), places.morningSigns()), before.unsure());
		return target.map((entry) -> this.journal.replaceMorning(entry.id(), facts, turn.said()))
			.orElseGet(() -> this.journal.write(turn.dog().id(), facts, turn.teller(), turn.said()));
	}

	/** Puts the onset that an answer named on the signs of the check-in's walk. */
	Optional<WalkEntry> begun(Turn turn, CheckIn checkIn, Onset onset) {
		return entryOf(checkIn).map((entry) -> {
			WalkFacts facts = entry.facts()
				.withSigns(SignsTold.begun(entry.facts().signs(), onset.minute(), onset.when()));
			return this.journal.replace(entry.id(), facts, turn.said());
		});
	}

	boolean anyBeganUnknown(@Nullable CheckIn checkIn) {
		return entryOf(checkIn).map((entry) -> SignsTold.anyBeganUnknown(entry.facts().signs())).orElse(false);
	}

	boolean stiffWithoutMinutes(Turn turn, CheckIn checkIn) {
		return this.journal.morningOf(turn.dog().id(), checkIn.aboutDate())
			.map(MorningEntry::facts)
			.filter((facts) -> facts.stiffMinutes() == null)
			.map((facts) -> facts.signs().stream().anyMatch(EntryWriter::stiff))
			.orElse(false);
	}

	private static boolean stiff(measuredwalk.signs.Sign sign) {
		return sign.present() && Objects.equals(sign.kind(), measuredwalk.signs.SignKind.STIFFNESS);
	}

}

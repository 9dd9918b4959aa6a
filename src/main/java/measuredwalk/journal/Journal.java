package measuredwalk.journal;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

import measuredwalk.household.ReadOnce;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** The journal of all dogs. Nothing that was ever written in it is changed or lost. */
@Service
@Transactional
public class Journal {

	private final WalkEntryRows walks;

	private final MorningEntryRows mornings;

	private final CountingEntries counting;

	private final ApplicationEventPublisher events;

	private final ReadOnce<UUID, List<WalkEntry>> walksRead = new ReadOnce<>();

	private final ReadOnce<UUID, List<MorningEntry>> morningsRead = new ReadOnce<>();

	Journal(WalkEntryRows walks, MorningEntryRows mornings, CountingEntries counting,
			ApplicationEventPublisher events) {
		this.counting = counting;
		this.walks = walks;
		this.mornings = mornings;
		this.events = events;
	}

	/**
	 * Writes down a walk.
	 * @param dogId the dog
	 * @param facts what is known of it
	 * @param teller who tells
	 * @param said the words that it was read from
	 * @return the entry
	 */
	public WalkEntry write(UUID dogId, WalkFacts facts, Teller teller, Said said) {
		return logged(this.walks.save(new WalkEntryEntity(dogId, facts, new Telling(teller, said))));
	}

	/**
	 * Writes down a morning.
	 * @param dogId the dog
	 * @param facts what is known of it
	 * @param teller who tells
	 * @param said the words that it was read from
	 * @return the entry
	 */
	public MorningEntry write(UUID dogId, MorningFacts facts, Teller teller, Said said) {
		return logged(this.mornings.save(new MorningEntryEntity(dogId, facts, new Telling(teller, said))));
	}

	/**
	 * Puts another version of a walk in the place of the one that counts.
	 * @param entryId the entry
	 * @param facts what is known now
	 * @param said the words that it was read from
	 * @return the new version
	 * @throws java.util.NoSuchElementException when no version of it counts
	 */
	public WalkEntry replace(UUID entryId, WalkFacts facts, Said said) {
		WalkEntryEntity counting = this.walks.findByEntryIdAndStanding(entryId, Standing.COUNTS).orElseThrow();
		return logged(this.walks.save(counting.replaced(facts, said)));
	}

	/**
	 * Puts another version of a morning in the place of the one that counts.
	 * @param entryId the entry
	 * @param facts what is known now
	 * @param said the words that it was read from
	 * @return the new version
	 * @throws java.util.NoSuchElementException when no version of it counts
	 */
	public MorningEntry replaceMorning(UUID entryId, MorningFacts facts, Said said) {
		MorningEntryEntity counting = this.mornings.findByEntryIdAndStanding(entryId, Standing.COUNTS).orElseThrow();
		return logged(this.mornings.save(counting.replaced(facts, said)));
	}

	/**
	 * What a carer told of last, of all that counts.
	 * @param teller the carer
	 * @return the entry, or empty when nothing of this carer's counts
	 */
	@Transactional(readOnly = true)
	public Optional<JournalEntry> lastOf(Teller teller) {
		Optional<WalkEntryEntity> walk = lastWalk(teller);
		Optional<MorningEntryEntity> morning = lastMorning(teller);
		return later(walk, morning) ? morning.map((entry) -> JournalEntry.of(entry.view()))
				: walk.map((entry) -> JournalEntry.of(entry.view()));
	}

	/**
	 * Takes back what a carer told of last.
	 * @param teller the carer
	 * @param at the time
	 * @return what was taken back, or empty when nothing of this carer's counts
	 */
	public Optional<JournalEntry> undoLast(Teller teller, Instant at) {
		Optional<WalkEntryEntity> walk = lastWalk(teller);
		Optional<MorningEntryEntity> morning = lastMorning(teller);
		if (later(walk, morning)) {
			morning.ifPresent((entry) -> entry.undo(teller.name(), at));
			return morning.map((entry) -> JournalEntry.of(logged(entry)));
		}
		walk.ifPresent((entry) -> entry.undo(teller.name(), at));
		return walk.map((entry) -> JournalEntry.of(logged(entry)));
	}

	/**
	 * Takes back a walk.
	 * @param entryId the entry
	 * @param by who takes it back
	 * @param at the time
	 * @throws java.util.NoSuchElementException when no version of it counts
	 */
	public void undo(UUID entryId, String by, Instant at) {
		WalkEntryEntity walk = this.walks.findByEntryIdAndStanding(entryId, Standing.COUNTS).orElseThrow();
		walk.undo(by, at);
		logged(walk);
	}

	private Optional<WalkEntryEntity> lastWalk(Teller teller) {
		return this.walks.findFirstByTellingReportedByAndStandingOrderByTellingReportedAtDescIdDesc(teller.carerId(),
				Standing.COUNTS);
	}

	private Optional<MorningEntryEntity> lastMorning(Teller teller) {
		return this.mornings.findFirstByTellingReportedByAndStandingOrderByTellingReportedAtDescIdDesc(teller.carerId(),
				Standing.COUNTS);
	}

	private static boolean later(Optional<WalkEntryEntity> walk, Optional<MorningEntryEntity> morning) {
		return morning.isPresent()
				&& (walk.isEmpty() || morning.get().view().reportedAt().isAfter(walk.get().view().reportedAt()));
	}

	/**
	 * The walks that count, by day.
	 * @param dogId the dog
	 * @return its walks
	 */
	@Transactional(readOnly = true)
	public List<WalkEntry> walks(UUID dogId) {
		return this.walksRead.of(dogId, () -> this.counting.walks(dogId));
	}

	/**
	 * The mornings that count, by day.
	 * @param dogId the dog
	 * @return its mornings
	 */
	@Transactional(readOnly = true)
	public List<MorningEntry> mornings(UUID dogId) {
		return this.morningsRead.of(dogId, () -> this.counting.mornings(dogId));
	}

	/**
	 * Every version of every walk, by day, also those that do not count any more.
	 * @param dogId the dog
	 * @return all versions
	 */
	@Transactional(readOnly = true)
	public List<WalkEntry> walkHistory(UUID dogId) {
		return this.walks.findByDogIdOrderByWalkDateAscIdAsc(dogId).stream().map(WalkEntryEntity::view).toList();
	}

	/**
	 * Every version of every morning, by day, also those that do not count any more.
	 * @param dogId the dog
	 * @return all versions
	 */
	@Transactional(readOnly = true)
	public List<MorningEntry> morningHistory(UUID dogId) {
		return this.mornings.findByDogIdOrderByMorningDateAscIdAsc(dogId)
			.stream()
			.map(MorningEntryEntity::view)
			.toList();
	}

	/**
	 * Finds the version of a walk that counts.
	 * @param entryId the entry
	 * @return the walk, or empty when it was taken back or is no walk
	 */
	@Transactional(readOnly = true)
	public Optional<WalkEntry> walk(UUID entryId) {
		return this.walks.findByEntryIdAndStanding(entryId, Standing.COUNTS).map(WalkEntryEntity::view);
	}

	/**
	 * Finds the morning of a day.
	 * @param dogId the dog
	 * @param date the morning's day
	 * @return the morning, or empty when nothing was told of it
	 */
	@Transactional(readOnly = true)
	public Optional<MorningEntry> morningOf(UUID dogId, LocalDate date) {
		return mornings(dogId).stream().filter((morning) -> morning.facts().date().equals(date)).findFirst();
	}

	private WalkEntry logged(WalkEntryEntity entity) {
		this.walks.flush();
		WalkEntry entry = entity.view();
		this.walksRead.forget(entry.dogId());
		this.events.publishEvent(new WalkLogged(entry.dogId(), entry.id()));
		return entry;
	}

	private MorningEntry logged(MorningEntryEntity entity) {
		this.mornings.flush();
		MorningEntry entry = entity.view();
		this.morningsRead.forget(entry.dogId());
		this.events.publishEvent(new MorningLogged(entry.dogId(), entry.id()));
		return entry;
	}

}

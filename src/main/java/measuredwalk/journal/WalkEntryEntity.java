package measuredwalk.journal;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Set;
import java.util.UUID;

import jakarta.persistence.Convert;
import jakarta.persistence.Embedded;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import measuredwalk.signs.LoadKind;
import measuredwalk.signs.Overall;
import measuredwalk.signs.Sign;
import org.jspecify.annotations.Nullable;

/** One version of a walk's entry; versions are added, never changed but for their end. */
@Entity
@Table(name = "walk_entry")
class WalkEntryEntity {

	@Id
	@GeneratedValue(strategy = GenerationType.IDENTITY)
	private Long id;

	private UUID entryId;

	private int version;

	@Enumerated(EnumType.STRING)
	private Standing standing;

	private UUID dogId;

	private LocalDate walkDate;

	private @Nullable LocalTime startTime;

	private @Nullable Double minutes;

	private @Nullable Double minutesLow;

	private @Nullable Double minutesHigh;

	private @Nullable Double distanceMetres;

	private boolean minutesEstimated;

	@Enumerated(EnumType.STRING)
	private @Nullable Overall overall;

	@Convert(converter = JournalColumns.Signs.class)
	private List<Sign> signs;

	@Convert(converter = JournalColumns.Paths.class)
	private List<String> unsure;

	@Convert(converter = JournalColumns.Loads.class)
	private Set<LoadKind> loads;

	@Embedded
	private Telling telling;

	protected WalkEntryEntity() {
	}

	WalkEntryEntity(UUID dogId, WalkFacts facts, Telling telling) {
		this(UUID.randomUUID(), 1, dogId, facts, telling);
	}

	private WalkEntryEntity(UUID entryId, int version, UUID dogId, WalkFacts facts, Telling telling) {
		this.entryId = entryId;
		this.version = version;
		this.standing = Standing.COUNTS;
		this.dogId = dogId;
		this.walkDate = facts.date();
		this.startTime = facts.start();
		this.minutes = facts.minutes();
		this.minutesLow = facts.minutesLow();
		this.minutesHigh = facts.minutesHigh();
		this.distanceMetres = facts.distanceMetres();
		this.minutesEstimated = facts.minutesEstimated();
		this.overall = facts.overall();
		this.signs = facts.signs();
		this.unsure = facts.unsure();
		this.loads = facts.loads();
		this.telling = telling;
	}

	/** Ends this version and gives the next one, which counts in its place. */
	WalkEntryEntity replaced(WalkFacts facts, Said said) {
		this.standing = Standing.REPLACED;
		this.telling.end(said.by(), said.at());
		return new WalkEntryEntity(this.entryId, this.version + 1, this.dogId, facts, this.telling.with(said));
	}

	void undo(String by, Instant at) {
		this.standing = Standing.UNDONE;
		this.telling.end(by, at);
	}

	WalkEntry view() {
		WalkFacts facts = new WalkFacts(this.walkDate, this.startTime, this.minutes, this.minutesLow, this.minutesHigh,
				this.distanceMetres, this.minutesEstimated, this.overall, this.signs, this.unsure, this.loads);
		return new WalkEntry(this.entryId, this.version, this.standing, this.dogId, facts, this.telling.said(),
				this.telling.teller(), this.telling.reportedAt(), this.telling.writtenAt(), this.telling.endedBy(),
				this.telling.endedAt());
	}

}

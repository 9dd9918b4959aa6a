package measuredwalk.journal;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
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
import measuredwalk.signs.Overall;
import measuredwalk.signs.Sign;
import org.jspecify.annotations.Nullable;

/**
 * One version of a morning's entry; versions are added, never changed but for their end.
 */
@Entity
@Table(name = "morning_entry")
class MorningEntryEntity {

	@Id
	@GeneratedValue(strategy = GenerationType.IDENTITY)
	private Long id;

	private UUID entryId;

	private int version;

	@Enumerated(EnumType.STRING)
	private Standing standing;

	private UUID dogId;

	private LocalDate morningDate;

	private @Nullable Double stiffMinutes;

	@Enumerated(EnumType.STRING)
	private @Nullable Overall overall;

	@Convert(converter = JournalColumns.Signs.class)
	private List<Sign> signs;

	@Convert(converter = JournalColumns.Paths.class)
	private List<String> unsure;

	@Embedded
	private Telling telling;

	protected MorningEntryEntity() {
	}

	MorningEntryEntity(UUID dogId, MorningFacts facts, Telling telling) {
		this(UUID.randomUUID(), 1, dogId, facts, telling);
	}

	private MorningEntryEntity(UUID entryId, int version, UUID dogId, MorningFacts facts, Telling telling) {
		this.entryId = entryId;
		this.version = version;
		this.standing = Standing.COUNTS;
		this.dogId = dogId;
		this.morningDate = facts.date();
		this.stiffMinutes = facts.stiffMinutes();
		this.overall = facts.overall();
		this.signs = facts.signs();
		this.unsure = facts.unsure();
		this.telling = telling;
	}

	/** Ends this version and gives the next one, which counts in its place. */
	MorningEntryEntity replaced(MorningFacts facts, Said said) {
		this.standing = Standing.REPLACED;
		this.telling.end(said.by(), said.at());
		return new MorningEntryEntity(this.entryId, this.version + 1, this.dogId, facts, this.telling.with(said));
	}

	void undo(String by, Instant at) {
		this.standing = Standing.UNDONE;
		this.telling.end(by, at);
	}

	MorningEntry view() {
		MorningFacts facts = new MorningFacts(this.morningDate, this.stiffMinutes, this.overall, this.signs,
				this.unsure);
		return new MorningEntry(this.entryId, this.version, this.standing, this.dogId, facts, this.telling.said(),
				this.telling.teller(), this.telling.reportedAt(), this.telling.writtenAt(), this.telling.endedBy(),
				this.telling.endedAt());
	}

}

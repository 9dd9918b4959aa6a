package measuredwalk.journal;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;

import jakarta.persistence.Convert;
import jakarta.persistence.Embeddable;
import org.jspecify.annotations.Nullable;

/** Who told of an entry, when, in what words, and who ended this version of it. */
@Embeddable
class Telling {

	@Convert(converter = JournalColumns.Words.class)
	private List<Said> said;

	private UUID reportedBy;

	private String reportedByName;

	private Instant reportedAt;

	private Instant writtenAt;

	private @Nullable String endedBy;

	private @Nullable Instant endedAt;

	protected Telling() {
	}

	Telling(Teller teller, Said first) {
		this(teller, List.of(first), first.at(), first.at());
	}

	private Telling(Teller teller, List<Said> said, Instant reportedAt, Instant writtenAt) {
		this.said = said;
		this.reportedBy = teller.carerId();
		this.reportedByName = teller.name();
		this.reportedAt = reportedAt;
		this.writtenAt = writtenAt;
	}

	/**
	 * The same telling with more words: the first teller stays the one who told of it.
	 */
	Telling with(Said more) {
		List<Said> all = new ArrayList<>(this.said);
		all.add(more);
		return new Telling(teller(), all, this.reportedAt, more.at());
	}

	void end(String by, Instant at) {
		this.endedBy = by;
		this.endedAt = at;
	}

	Teller teller() {
		return new Teller(this.reportedBy, this.reportedByName);
	}

	List<Said> said() {
		return this.said;
	}

	Instant reportedAt() {
		return this.reportedAt;
	}

	Instant writtenAt() {
		return this.writtenAt;
	}

	@Nullable String endedBy() {
		return this.endedBy;
	}

	@Nullable Instant endedAt() {
		return this.endedAt;
	}

}

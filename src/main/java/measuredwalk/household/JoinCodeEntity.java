package measuredwalk.household;

import java.time.Duration;
import java.time.Instant;
import java.util.UUID;

import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import org.jspecify.annotations.Nullable;

@Entity
@SuppressWarnings("UnusedVariable") // Columns that are written for the record and read by
									// SQL only.
@Table(name = "join_code")
class JoinCodeEntity {

	/** Long enough for a letter and a busy fortnight. */
	private static final Duration GOOD_FOR = Duration.ofDays(30);

	@Id
	private String code;

	private UUID householdId;

	private String madeBy;

	private Instant madeAt;

	private Instant expiresAt;

	private @Nullable Instant usedAt;

	protected JoinCodeEntity() {
	}

	JoinCodeEntity(String code, UUID householdId, String madeBy, Instant madeAt) {
		this.code = code;
		this.householdId = householdId;
		this.madeBy = madeBy;
		this.madeAt = madeAt;
		this.expiresAt = madeAt.plus(GOOD_FOR);
	}

	String code() {
		return this.code;
	}

	UUID householdId() {
		return this.householdId;
	}

	boolean used() {
		return this.usedAt != null;
	}

	boolean expired(Instant now) {
		return now.isAfter(this.expiresAt);
	}

	void use(Instant at) {
		this.usedAt = at;
	}

}

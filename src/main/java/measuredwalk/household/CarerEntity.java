package measuredwalk.household;

import java.time.Instant;
import java.util.UUID;

import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import org.jspecify.annotations.Nullable;

@Entity
@SuppressWarnings("UnusedVariable") // Columns that are written for the record and read by
									// SQL only.
@Table(name = "carer")
class CarerEntity {

	@Id
	private UUID id;

	private UUID householdId;

	private long chatId;

	private String name;

	private Instant joinedAt;

	private @Nullable Instant stoppedAt;

	private @Nullable Instant leftAt;

	protected CarerEntity() {
	}

	CarerEntity(UUID householdId, long chatId, String name, Instant joinedAt) {
		this.id = UUID.randomUUID();
		this.householdId = householdId;
		this.chatId = chatId;
		this.name = name;
		this.joinedAt = joinedAt;
	}

	UUID householdId() {
		return this.householdId;
	}

	long chatId() {
		return this.chatId;
	}

	void silence(Instant at) {
		this.stoppedAt = at;
	}

	void speakAgain() {
		this.stoppedAt = null;
	}

	Instant joinedAt() {
		return this.joinedAt;
	}

	/** Whoever left comes back as if never gone. */
	void stay() {
		this.leftAt = null;
	}

	void leave(Instant at) {
		this.leftAt = at;
	}

	Carer view() {
		return new Carer(this.id, this.householdId, this.chatId, this.name, this.stoppedAt != null);
	}

}

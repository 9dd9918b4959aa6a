package measuredwalk.household;

import java.time.Instant;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.UUID;

import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;

@Entity
@SuppressWarnings("UnusedVariable") // Columns that are written for the record and read by
									// SQL only.
@Table(name = "household")
class HouseholdEntity {

	/** Before most people leave for work: common practice, no source. */
	private static final LocalTime USUAL_MORNING = LocalTime.of(7, 30);

	@Id
	private UUID id;

	private String timeZone;

	private LocalTime morningAt;

	private Instant createdAt;

	protected HouseholdEntity() {
	}

	HouseholdEntity(ZoneId timeZone, Instant createdAt) {
		this.id = UUID.randomUUID();
		this.timeZone = timeZone.getId();
		this.morningAt = USUAL_MORNING;
		this.createdAt = createdAt;
	}

	UUID id() {
		return this.id;
	}

	Household view() {
		return new Household(this.id, ZoneId.of(this.timeZone), this.morningAt);
	}

}

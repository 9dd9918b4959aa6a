package measuredwalk.household;

import java.time.LocalDate;
import java.util.UUID;

import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import org.jspecify.annotations.Nullable;

@Entity
@SuppressWarnings("UnusedVariable") // Columns that are written for the record and read by
									// SQL only.
@Table(name = "medication")
class MedicationEntity {

	@Id
	@GeneratedValue(strategy = GenerationType.IDENTITY)
	private Long id;

	private UUID dogId;

	private String kind;

	private LocalDate startedOn;

	private @Nullable LocalDate stoppedOn;

	private boolean knownAtEnrolment;

	protected MedicationEntity() {
	}

	MedicationEntity(UUID dogId, String kind, LocalDate startedOn, boolean knownAtEnrolment) {
		this.dogId = dogId;
		this.kind = kind;
		this.startedOn = startedOn;
		this.knownAtEnrolment = knownAtEnrolment;
	}

	UUID dogId() {
		return this.dogId;
	}

	String kind() {
		return this.kind;
	}

	boolean given() {
		return this.stoppedOn == null;
	}

	void stop(LocalDate on) {
		this.stoppedOn = on;
	}

	Medication view() {
		return new Medication(this.kind, this.startedOn, this.stoppedOn, this.knownAtEnrolment);
	}

}

package measuredwalk.household;

import java.time.Instant;
import java.time.LocalDate;
import java.util.UUID;

import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Table;

@Entity
@SuppressWarnings("UnusedVariable") // Columns that are written for the record and read by
									// SQL only.
@Table(name = "plan")
class PlanEntity {

	@Id
	@GeneratedValue(strategy = GenerationType.IDENTITY)
	private Long id;

	private UUID dogId;

	private LocalDate fromDate;

	private double planMinutes;

	private int walksPerDay;

	private double minMinutes;

	private double maxMinutes;

	private String setBy;

	private Instant setAt;

	protected PlanEntity() {
	}

	PlanEntity(UUID dogId, Plan plan, String setBy, Instant setAt) {
		this.dogId = dogId;
		this.fromDate = plan.from();
		this.planMinutes = plan.planMinutes();
		this.walksPerDay = plan.walksPerDay();
		this.minMinutes = plan.minMinutes();
		this.maxMinutes = plan.maxMinutes();
		this.setBy = setBy;
		this.setAt = setAt;
	}

	UUID dogId() {
		return this.dogId;
	}

	Plan view() {
		return new Plan(this.fromDate, this.planMinutes, this.walksPerDay, this.minMinutes, this.maxMinutes);
	}

}

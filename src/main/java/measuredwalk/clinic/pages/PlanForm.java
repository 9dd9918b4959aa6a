package measuredwalk.clinic.pages;

import java.util.Arrays;
import java.util.List;

import measuredwalk.household.Dog;
import measuredwalk.household.DogChange;
import measuredwalk.household.Plan;

/**
 * The plan editor's fields; public for the templates only.
 *
 * @param planMinutes minutes of each walk
 * @param walksPerDay walks a day
 * @param minMinutes the least minutes to suggest
 * @param maxMinutes the most minutes to suggest
 * @param medications kinds of medicine, split by commas
 */
public record PlanForm(double planMinutes, int walksPerDay, double minMinutes, double maxMinutes, String medications) {

	static PlanForm of(Dog dog) {
		Plan plan = dog.plan();
		return new PlanForm(plan.planMinutes(), plan.walksPerDay(), plan.minMinutes(), plan.maxMinutes(),
				String.join(", ", dog.medications()));
	}

	/**
	 * Minutes as they stand in a field.
	 * @param minutes the minutes
	 * @return without a needless fraction
	 */
	public String shown(double minutes) {
		return Wording.figure(minutes);
	}

	Plan plan(Dog dog) {
		return new Plan(dog.plan().from(), this.planMinutes, this.walksPerDay, this.minMinutes, this.maxMinutes);
	}

	/** What differs from the dog as it is; the rest stays as it is. */
	DogChange change(Dog dog) {
		Plan before = dog.plan();
		return new DogChange((this.planMinutes != before.planMinutes()) ? this.planMinutes : null,
				(this.walksPerDay != before.walksPerDay()) ? this.walksPerDay : null,
				(this.minMinutes != before.minMinutes()) ? this.minMinutes : null,
				(this.maxMinutes != before.maxMinutes()) ? this.maxMinutes : null,
				kinds().equals(dog.medications()) ? null : kinds());
	}

	private List<String> kinds() {
		return Arrays.stream(this.medications.split(","))
			.map((kind) -> kind.strip().toLowerCase(java.util.Locale.ROOT))
			.filter((kind) -> !kind.isEmpty())
			.distinct()
			.toList();
	}

}

package measuredwalk.tolerance.simulation;

import java.time.LocalDate;

import measuredwalk.tolerance.ToleranceEvent;
import measuredwalk.tolerance.ToleranceEvent.DogEnrolled;

/** The clinic's plan, whatever happens. */
final class FixedPlan implements Policy {

	@Override
	public String name() {
		return "fixed plan";
	}

	@Override
	public PolicyCourse enrol(DogEnrolled dog, Luck luck) {
		Dose dose = Dose.of(dog.plan().walksPerDay(), dog.plan().planMinutes());
		return new PolicyCourse() {

			@Override
			public void accept(ToleranceEvent event) {
				// A fixed plan does not listen.
			}

			@Override
			public Dose suggest(LocalDate date, Insight insight) {
				return dose;
			}

		};
	}

}

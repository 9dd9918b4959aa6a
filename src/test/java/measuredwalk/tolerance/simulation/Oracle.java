package measuredwalk.tolerance.simulation;

import java.time.LocalDate;

import measuredwalk.tolerance.ToleranceEvent;
import measuredwalk.tolerance.ToleranceEvent.DogEnrolled;

/** Knows all but today's luck, and suggests the best safe dose. */
final class Oracle implements Policy {

	@Override
	public String name() {
		return "oracle";
	}

	@Override
	public PolicyCourse enrol(DogEnrolled dog, Luck luck) {
		int walks = dog.plan().walksPerDay();
		return new PolicyCourse() {

			@Override
			public void accept(ToleranceEvent event) {
				// There is nothing that an owner could tell it.
			}

			@Override
			public Dose suggest(LocalDate date, Insight insight) {
				return Dose.of(walks, insight.bestSafeMinutes(walks));
			}

		};
	}

}

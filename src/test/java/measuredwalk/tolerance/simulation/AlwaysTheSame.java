package measuredwalk.tolerance.simulation;

import java.time.LocalDate;

import measuredwalk.tolerance.ToleranceEvent;
import measuredwalk.tolerance.ToleranceEvent.DogEnrolled;

/**
 * One walk of the same minutes every day, to see what dogs and owners do.
 *
 * @param minutes minutes of the walk
 */
record AlwaysTheSame(double minutes) implements Policy {

	@Override
	public String name() {
		return "always " + this.minutes;
	}

	@Override
	public PolicyCourse enrol(DogEnrolled dog, Luck luck) {
		return new PolicyCourse() {

			@Override
			public void accept(ToleranceEvent event) {
				// It changes nothing.
			}

			@Override
			public Dose suggest(LocalDate date, Insight insight) {
				return Dose.of(1, AlwaysTheSame.this.minutes);
			}

		};
	}

}

package measuredwalk.tolerance.simulation;

import java.time.LocalDate;

import measuredwalk.tolerance.ToleranceEvent;
import measuredwalk.tolerance.ToleranceEvent.DogEnrolled;
import measuredwalk.tolerance.WalkPlan;

/**
 * Ten percent more every week without trouble, half after a flare, as on clinic handouts.
 */
final class TenPercentRule implements Policy {

	@Override
	public String name() {
		return "ten percent a week";
	}

	@Override
	public PolicyCourse enrol(DogEnrolled dog, Luck luck) {
		return new Course(dog);
	}

	private static final class Course implements PolicyCourse {

		private static final int DAYS_OF_A_STEP = 7;

		/** A flare is not halved twice: its following mornings belong to it. */
		private static final int DAYS_OF_A_FLARE = 3;

		private final WalkPlan plan;

		private double minutes;

		private LocalDate lastChange;

		private boolean flare;

		private boolean trouble;

		Course(DogEnrolled dog) {
			this.plan = dog.plan();
			this.minutes = dog.plan().planMinutes();
			this.lastChange = dog.date();
		}

		@Override
		public void accept(ToleranceEvent event) {
			Trouble told = Trouble.of(event);
			this.flare |= told == Trouble.FLARE;
			this.trouble |= told == Trouble.SOME || told == Trouble.FLARE;
		}

		@Override
		public Dose suggest(LocalDate date, Insight insight) {
			long days = this.lastChange.until(date).getDays();
			if (this.flare && days >= DAYS_OF_A_FLARE) {
				change(date, this.minutes / 2);
			}
			else if (days >= DAYS_OF_A_STEP) {
				change(date, this.trouble ? this.minutes : this.minutes * 1.10);
			}
			this.flare = false;
			return Dose.of(this.plan.walksPerDay(), this.minutes);
		}

		private void change(LocalDate date, double to) {
			this.minutes = Math.max(this.plan.minMinutes(), Math.min(this.plan.maxMinutes(), to));
			this.lastChange = date;
			this.trouble = false;
		}

	}

}

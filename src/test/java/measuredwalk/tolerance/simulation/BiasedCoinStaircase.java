package measuredwalk.tolerance.simulation;

import java.time.LocalDate;

import measuredwalk.tolerance.ToleranceEvent;
import measuredwalk.tolerance.ToleranceEvent.DogEnrolled;
import measuredwalk.tolerance.WalkPlan;

/**
 * The biased-coin up-and-down rule (Durham and Flournoy 1994; from memory): a step down
 * after trouble, and after none a step up with a chance of alpha / (1 - alpha), which
 * settles where trouble is told on a share alpha of days.
 */
final class BiasedCoinStaircase implements Policy {

	/** A tenth: the step that clinics use. */
	private static final double STEP = 1.10;

	private static final double COIN = Insight.ALPHA / (1 - Insight.ALPHA);

	@Override
	public String name() {
		return "staircase";
	}

	@Override
	public PolicyCourse enrol(DogEnrolled dog, Luck luck) {
		return new Course(dog, luck);
	}

	private static final class Course implements PolicyCourse {

		private final WalkPlan plan;

		private final Luck coin;

		private double minutes;

		private Trouble told = Trouble.NOTHING_TOLD;

		Course(DogEnrolled dog, Luck coin) {
			this.plan = dog.plan();
			this.coin = coin;
			this.minutes = dog.plan().planMinutes();
		}

		@Override
		public void accept(ToleranceEvent event) {
			Trouble trouble = Trouble.of(event);
			this.told = (trouble.compareTo(this.told) > 0) ? trouble : this.told;
		}

		@Override
		public Dose suggest(LocalDate date, Insight insight) {
			boolean heads = this.coin.happens(COIN);
			if (this.told == Trouble.SOME || this.told == Trouble.FLARE) {
				this.minutes /= STEP;
			}
			else if (this.told == Trouble.NONE && heads) {
				this.minutes *= STEP;
			}
			this.told = Trouble.NOTHING_TOLD;
			this.minutes = Math.max(this.plan.minMinutes(), Math.min(this.plan.maxMinutes(), this.minutes));
			return Dose.of(this.plan.walksPerDay(), this.minutes);
		}

	}

}

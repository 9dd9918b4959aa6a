package measuredwalk.tolerance.simulation;

import java.time.LocalDate;

import measuredwalk.signs.Sign;
import measuredwalk.tolerance.ToleranceEvent;
import measuredwalk.tolerance.ToleranceEvent.DogEnrolled;
import measuredwalk.tolerance.ToleranceEvent.MorningSeen;
import measuredwalk.tolerance.ToleranceEvent.WalkTaken;
import measuredwalk.tolerance.WalkPlan;

/**
 * A sharp filter that believes what it is told: owners see 90 % and imagine next to
 * nothing, a clear morning is proof that yesterday's longest walk was too long, days are
 * all alike and walks do not carry over. It is here to show what carelessness costs.
 */
final class CarelessFilter implements Policy {

	@Override
	public String name() {
		return "careless filter";
	}

	@Override
	public PolicyCourse enrol(DogEnrolled dog, Luck luck) {
		return new Course(dog.plan());
	}

	private static final class Course implements PolicyCourse {

		private static final double SEES = 0.9;

		private static final double IMAGINES = 0.002;

		private final WalkPlan plan;

		private final SharpBelief belief;

		private LocalDate lastWalkDay = LocalDate.MIN;

		private double longest;

		Course(WalkPlan plan) {
			this.plan = plan;
			this.belief = new SharpBelief(Math.log(1.35 * plan.planMinutes()) + 0.20);
		}

		@Override
		public void accept(ToleranceEvent event) {
			if (event instanceof WalkTaken walk) {
				walk(walk);
			}
			if (event instanceof MorningSeen morning && Trouble.of(morning) == Trouble.FLARE
					&& this.lastWalkDay.equals(morning.date().minusDays(1))) {
				this.belief.weigh(this.longest, (over) -> IMAGINES + SEES * over);
			}
		}

		private void walk(WalkTaken walk) {
			this.longest = walk.date().equals(this.lastWalkDay) ? Math.max(this.longest, walk.minutes())
					: walk.minutes();
			this.lastWalkDay = walk.date();
			boolean trouble = walk.signs().stream().anyMatch(Sign::present);
			this.belief.weigh(walk.minutes(),
					(over) -> trouble ? IMAGINES + SEES * over : (1 - IMAGINES) * (1 - SEES * over));
		}

		@Override
		public Dose suggest(LocalDate date, Insight insight) {
			this.belief.drift();
			double most = Quantiles.invert(this.belief::chance, Insight.ALPHA, 1, 240);
			double minutes = Math.max(this.plan.minMinutes(), Math.min(this.plan.maxMinutes(), most));
			return new Dose(this.plan.walksPerDay(), minutes, this.belief.chance(minutes), Double.NaN, Double.NaN,
					Double.NaN, "");
		}

	}

}

package measuredwalk.tolerance.simulation;

import java.time.LocalDate;

import measuredwalk.signs.Sign;
import measuredwalk.tolerance.ToleranceEvent;
import measuredwalk.tolerance.ToleranceEvent.DogEnrolled;
import measuredwalk.tolerance.ToleranceEvent.WalkTaken;
import measuredwalk.tolerance.WalkPlan;

/**
 * A sharp filter that believes what it is told: owners see 90 % and imagine 1 %, days are
 * all alike, walks do not carry over, mornings are left out. It is here to show what
 * carelessness costs.
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

		private static final int POINTS = 121;

		private static final double SHORTEST = Math.log(2);

		private static final double STEP = (Math.log(240) - SHORTEST) / (POINTS - 1);

		private static final double SEES = 0.9;

		private static final double IMAGINES = 0.01;

		private static final double WALK_SPREAD = 0.15;

		private static final double DRIFT = 0.03;

		private static final double[] STEEP_MINUTES = steepMinutes();

		private final WalkPlan plan;

		private double[] belief = new double[POINTS];

		Course(WalkPlan plan) {
			this.plan = plan;
			double middle = Math.log(1.35 * plan.planMinutes()) + 0.20;
			for (int point = 0; point < POINTS; point++) {
				double z = (logMinutes(point) - middle) / 0.40;
				this.belief[point] = Math.exp(-z * z / 2);
			}
			normalise();
		}

		@Override
		public void accept(ToleranceEvent event) {
			if (event instanceof WalkTaken walk) {
				boolean trouble = walk.signs().stream().anyMatch(Sign::present);
				double dose = steep(walk.minutes());
				for (int point = 0; point < POINTS; point++) {
					double over = over(dose, point);
					double none = (1 - IMAGINES) * (1 - SEES * over);
					this.belief[point] *= trouble ? 1 - none : none;
				}
				normalise();
			}
		}

		@Override
		public Dose suggest(LocalDate date, Insight insight) {
			drift();
			double most = Quantiles.invert(this::chance, Insight.ALPHA, 1, 240);
			double minutes = Math.max(this.plan.minMinutes(), Math.min(this.plan.maxMinutes(), most));
			return new Dose(this.plan.walksPerDay(), minutes, chance(minutes), Double.NaN, Double.NaN, Double.NaN);
		}

		private double chance(double minutes) {
			double dose = steep(minutes);
			double sum = 0;
			for (int point = 0; point < POINTS; point++) {
				sum += this.belief[point] * over(dose, point);
			}
			return sum;
		}

		/**
		 * A logistic curve with the slope of the normal one, which needs one power a
		 * dose.
		 */
		private static double over(double steepDose, int point) {
			return steepDose / (steepDose + STEEP_MINUTES[point]);
		}

		private static double steep(double minutes) {
			return Math.pow(minutes, 1.702 / WALK_SPREAD);
		}

		private static double[] steepMinutes() {
			double[] powers = new double[POINTS];
			for (int point = 0; point < POINTS; point++) {
				powers[point] = steep(Math.exp(logMinutes(point)));
			}
			return powers;
		}

		/** One day's drift: a random walk on the grid with the variance of the drift. */
		private void drift() {
			double move = DRIFT * DRIFT / (STEP * STEP) / 2;
			double[] next = new double[POINTS];
			for (int point = 0; point < POINTS; point++) {
				next[point] += this.belief[point] * (1 - 2 * move);
				next[Math.max(0, point - 1)] += this.belief[point] * move;
				next[Math.min(POINTS - 1, point + 1)] += this.belief[point] * move;
			}
			this.belief = next;
		}

		private void normalise() {
			double sum = 0;
			for (double mass : this.belief) {
				sum += mass;
			}
			for (int point = 0; point < POINTS; point++) {
				this.belief[point] /= sum;
			}
		}

		private static double logMinutes(int point) {
			return SHORTEST + STEP * point;
		}

	}

}

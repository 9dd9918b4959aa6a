package measuredwalk.tolerance.simulation;

import java.util.function.DoubleUnaryOperator;

/**
 * A belief about one tolerance for all days, on a grid of log minutes: what the careless
 * filter keeps.
 */
final class SharpBelief {

	private static final int POINTS = 121;

	private static final double SHORTEST = Math.log(2);

	private static final double STEP = (Math.log(240) - SHORTEST) / (POINTS - 1);

	private static final double PRIOR_SPREAD = 0.40;

	private static final double WALK_SPREAD = 0.15;

	private static final double DRIFT = 0.03;

	private static final double[] STEEP_MINUTES = steepMinutes();

	private double[] masses = new double[POINTS];

	SharpBelief(double middle) {
		for (int point = 0; point < POINTS; point++) {
			double z = (logMinutes(point) - middle) / PRIOR_SPREAD;
			this.masses[point] = Math.exp(-z * z / 2);
		}
		normalise();
	}

	/**
	 * Weighs by what was told.
	 * @param minutes the minutes that it speaks of
	 * @param likelihood of it, by the chance that such a walk is over the tolerance
	 */
	void weigh(double minutes, DoubleUnaryOperator likelihood) {
		double dose = steep(minutes);
		for (int point = 0; point < POINTS; point++) {
			this.masses[point] *= likelihood.applyAsDouble(over(dose, point));
		}
		normalise();
	}

	/** The chance that a walk of so many minutes is over the tolerance. */
	double chance(double minutes) {
		double dose = steep(minutes);
		double sum = 0;
		for (int point = 0; point < POINTS; point++) {
			sum += this.masses[point] * over(dose, point);
		}
		return sum;
	}

	/** A day's drift: a random walk on the grid with the variance of the drift. */
	void drift() {
		double move = DRIFT * DRIFT / (STEP * STEP) / 2;
		double[] next = new double[POINTS];
		for (int point = 0; point < POINTS; point++) {
			next[point] += this.masses[point] * (1 - 2 * move);
			next[Math.max(0, point - 1)] += this.masses[point] * move;
			next[Math.min(POINTS - 1, point + 1)] += this.masses[point] * move;
		}
		this.masses = next;
	}

	/**
	 * A logistic curve with the slope of the normal one, which needs one power a dose.
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

	private void normalise() {
		double sum = 0;
		for (double mass : this.masses) {
			sum += mass;
		}
		for (int point = 0; point < POINTS; point++) {
			this.masses[point] /= sum;
		}
	}

	private static double logMinutes(int point) {
		return SHORTEST + STEP * point;
	}

}

package measuredwalk.tolerance.filter;

/**
 * A normal step on a grid, as weights on multiples of the grid's step.
 *
 * <p>
 * A kernel much wider than the grid's step is sampled only on every second, third ...
 * point: the trapezoid rule on a Gaussian errs by about exp(-2 (pi sd / spacing)^2),
 * which is below 1e-12 at the spacing that is used, and the work shrinks by the same
 * factor.
 */
public final class Kernel {

	/** Spacing of the samples in standard deviations: at most this. */
	private static final double FINE = 0.5;

	/** Where the tails are cut, in standard deviations: 1e-10 of the mass is beyond. */
	private static final double FULL_REACH = 6.5;

	private final int first;

	private final int stride;

	private final double[] weights;

	private Kernel(int first, int stride, double[] weights) {
		this.first = first;
		this.stride = stride;
		this.weights = weights;
	}

	/**
	 * A normal step.
	 * @param mean of the step
	 * @param deviation its standard deviation; 0 for a fixed step of {@code mean}, to the
	 * nearest grid point
	 * @param gridStep distance of two grid points
	 * @return the kernel; its weights sum to 1
	 * @throws IllegalArgumentException when the deviation is above 0 but under 0.7 grid
	 * steps: nearly all the weight would fall on one point and the filter would freeze
	 */
	public static Kernel normal(double mean, double deviation, double gridStep) {
		return normal(mean, deviation, gridStep, FULL_REACH, FINE);
	}

	/**
	 * A normal step with its tails cut, for less work.
	 * @param mean of the step
	 * @param deviation its standard deviation, 0 as for {@link #normal}
	 * @param gridStep distance of two grid points
	 * @param reach where the tails are cut, in standard deviations; at 4.5 the variance
	 * is a part in ten thousand too small
	 * @param spacing the most distance of two samples, in standard deviations. What is
	 * moved keeps its total, mean and variance to 1e-9 up to 1; wide spacing only leaves
	 * a ripple, of 4e-4 at 0.75, on what was less smooth than half the step
	 * @return the kernel; its weights sum to 1
	 * @throws IllegalArgumentException as {@link #normal}
	 */
	public static Kernel normal(double mean, double deviation, double gridStep, double reach, double spacing) {
		if (deviation == 0) {
			return new Kernel((int) Math.rint(mean / gridStep), 1, new double[] { 1 });
		}
		if (deviation < 0.7 * gridStep) {
			throw new IllegalArgumentException(
					"a step of sd " + deviation + " is too narrow for a grid of " + gridStep + ": use a finer grid");
		}
		int stride = Math.max(1, (int) (spacing * deviation / gridStep));
		double distance = stride * gridStep;
		int low = (int) Math.floor((mean - reach * deviation) / distance);
		int high = (int) Math.ceil((mean + reach * deviation) / distance);
		double[] weights = new double[high - low + 1];
		double total = 0;
		for (int k = 0; k < weights.length; k++) {
			weights[k] = NormalCurve.density(((low + k) * distance - mean) / deviation);
			total += weights[k];
		}
		for (int k = 0; k < weights.length; k++) {
			weights[k] /= total;
		}
		return new Kernel(low * stride, stride, weights);
	}

	/**
	 * How many grid points the kernel reaches to either side, at most.
	 * @return the reach in points
	 */
	public int reach() {
		return Math.max(Math.abs(this.first), Math.abs(this.first + (this.weights.length - 1) * this.stride));
	}

	/**
	 * Moves masses by the step. What would leave the grid is lost.
	 * @param from masses before
	 * @param low first point of {@code from} that has mass
	 * @param high the point after the last that has mass
	 * @param to masses after, added to what is there
	 * @param factor multiplies everything
	 * @param bench room to work in
	 */
	public void move(double[] from, int low, int high, double[] to, double factor, Bench bench) {
		int k = 0;
		for (; k + 1 < this.weights.length; k += 2) {
			int one = offset(k);
			int other = offset(k + 1);
			int first = Math.max(0, low + one);
			int end = Math.min(to.length, high + other);
			if (first < end) {
				bench.shift(0, from, one, low, high, first, end);
				bench.shift(1, from, other, low, high, first, end);
				bench.addBoth(to, first, end, factor * this.weights[k], factor * this.weights[k + 1]);
			}
		}
		if (k < this.weights.length) {
			int first = Math.max(0, low + offset(k));
			int end = Math.min(to.length, high + offset(k));
			if (first < end) {
				bench.shift(0, from, offset(k), low, high, first, end);
				bench.addOne(to, first, end, factor * this.weights[k]);
			}
		}
	}

	private int offset(int weight) {
		return this.first + weight * this.stride;
	}

	/**
	 * The expected value of a function one step away, for each of a row of points.
	 * @param function the function's values; there must be {@link #reach()} of them on
	 * both sides of the row
	 * @param functionStart where point 0 of the row is in {@code function}
	 * @param expected where the expectations are added
	 * @param low first point wanted
	 * @param high the point after the last wanted
	 * @param bench room to work in
	 */
	public void expect(double[] function, int functionStart, double[] expected, int low, int high, Bench bench) {
		int k = 0;
		for (; k + 1 < this.weights.length; k += 2) {
			bench.copy(0, function, functionStart + offset(k), low, high);
			bench.copy(1, function, functionStart + offset(k + 1), low, high);
			bench.addBoth(expected, low, high, this.weights[k], this.weights[k + 1]);
		}
		if (k < this.weights.length) {
			bench.copy(0, function, functionStart + offset(k), low, high);
			bench.addOne(expected, low, high, this.weights[k]);
		}
	}

}

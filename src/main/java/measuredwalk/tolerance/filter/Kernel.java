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
	private static final double SPACING = 0.85;

	/** Where the tails are cut, in standard deviations: 1e-7 of the mass is beyond. */
	private static final double REACH = 5.3;

	private static final int WIDEST_STRIDE = 4;

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
		if (deviation == 0) {
			return new Kernel((int) Math.rint(mean / gridStep), 1, new double[] { 1 });
		}
		if (deviation < 0.7 * gridStep) {
			throw new IllegalArgumentException(
					"a step of sd " + deviation + " is too narrow for a grid of " + gridStep + ": use a finer grid");
		}
		int stride = Math.max(1, Math.min(WIDEST_STRIDE, (int) (SPACING * deviation / gridStep)));
		double spacing = stride * gridStep;
		int low = (int) Math.floor((mean - REACH * deviation) / spacing);
		int high = (int) Math.ceil((mean + REACH * deviation) / spacing);
		double[] weights = new double[high - low + 1];
		double total = 0;
		for (int k = 0; k < weights.length; k++) {
			weights[k] = NormalCurve.density(((low + k) * spacing - mean) / deviation);
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
	 * @param fromStart where the first mass is in {@code from}
	 * @param to masses after, added to what is there
	 * @param toStart where the first mass goes in {@code to}
	 * @param size number of points
	 * @param factor multiplies everything
	 */
	public void move(double[] from, int fromStart, double[] to, int toStart, int size, double factor) {
		for (int k = 0; k < this.weights.length; k++) {
			int offset = this.first + k * this.stride;
			int low = Math.max(0, -offset);
			int high = Math.min(size, size - offset);
			addScaled(from, fromStart + low, to, toStart + low + offset, high - low, factor * this.weights[k]);
		}
	}

	/**
	 * The expected value of a function one step away, for each of a row of points.
	 * @param function the function's values; there must be {@link #reach()} of them on
	 * both sides of the row
	 * @param functionStart where the first point of the row is in {@code function}
	 * @param expected filled with the expectations
	 * @param size number of points
	 */
	public void expect(double[] function, int functionStart, double[] expected, int size) {
		java.util.Arrays.fill(expected, 0, size, 0);
		for (int k = 0; k < this.weights.length; k++) {
			addScaled(function, functionStart + this.first + k * this.stride, expected, 0, size, this.weights[k]);
		}
	}

	/** Kept free of conditions so that the compiler turns it into vector instructions. */
	private static void addScaled(double[] from, int fromStart, double[] to, int toStart, int size, double factor) {
		for (int i = 0; i < size; i++) {
			to[toStart + i] += factor * from[fromStart + i];
		}
	}

}

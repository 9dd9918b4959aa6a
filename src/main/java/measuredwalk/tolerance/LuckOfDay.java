package measuredwalk.tolerance;

import measuredwalk.tolerance.filter.Bench;
import measuredwalk.tolerance.filter.Kernel;

/** The day's own luck, which moves the fresh tolerance to today's. */
final class LuckOfDay {

	/** Where the tails are cut, in standard deviations: 1e-7 of the mass is beyond. */
	private static final double REACH = 5.3;

	/**
	 * What owners tell makes steps of half the luck's width, so that samples are close:
	 * at this distance the ripple that is left is under 1e-7.
	 */
	private static final double SPACING = 0.6;

	private final Kernel kernel;

	private final Axes axes;

	LuckOfDay(ToleranceSettings settings) {
		this.kernel = Kernel.normal(0, settings.walking().dayDeviation(), Axes.step(settings), REACH, SPACING);
		this.axes = Axes.of(settings, this.kernel.reach());
	}

	/** A bench that is large enough. */
	Bench bench() {
		return new Bench(this.axes.today().size());
	}

	Axes axes() {
		return this.axes;
	}

	/**
	 * Averages a function of today's tolerance. One average serves a dog without and with
	 * a flare, which look at the same values a flare apart.
	 * @param today the function
	 * @param low first fresh point wanted
	 * @param high the point after the last
	 * @param bench room to work in
	 * @return the average for each fresh point in a flare; that without a flare is
	 * {@link Axes#flarePoints()} further on
	 */
	double[] average(double[] today, int low, int high, Bench bench) {
		double[] fresh = new double[this.axes.fresh().size() + this.axes.flarePoints()];
		this.kernel.expect(today, this.axes.firstToday(true), fresh, low, high + this.axes.flarePoints(), bench);
		return fresh;
	}

	/**
	 * Lets luck move masses.
	 * @param placed masses without luck
	 * @param today where they are added
	 * @param factor multiplies them
	 * @param bench room to work in
	 */
	void move(double[] placed, double[] today, double factor, Bench bench) {
		this.kernel.move(placed, 0, placed.length, today, factor, bench);
	}

}

package measuredwalk.tolerance;

import measuredwalk.tolerance.filter.Grid;

/**
 * The grid of fresh tolerance and the wider one of today's, which is moved by a flare and
 * the day's luck. A flare moves by a whole number of points, so that no mass is smeared.
 *
 * @param fresh logarithms of the fresh tolerance in minutes, from 3 to about 240
 * @param today logarithms of today's tolerance
 * @param flarePoints points that a flare moves down by
 * @param luckPoints points that the day's luck may move by, either way
 */
record Axes(Grid fresh, Grid today, int flarePoints, int luckPoints) {

	private static final double LEAST_MINUTES = 3;

	private static final double MOST_MINUTES = 240;

	/**
	 * Makes a step of 0.0284 for a flare factor of 0.6. The daily drift is 0.9 of it:
	 * sampled on the grid it keeps its variance to a part in ten thousand (the trapezoid
	 * rule), so that the filter does not freeze.
	 */
	private static final int FLARE_POINTS = 18;

	static double step(ToleranceSettings settings) {
		return -Math.log(settings.flares().factor()) / FLARE_POINTS;
	}

	static Axes of(ToleranceSettings settings, int luckPoints) {
		double step = step(settings);
		int size = 1 + (int) Math.ceil(Math.log(MOST_MINUTES / LEAST_MINUTES) / step);
		Grid fresh = new Grid(Math.log(LEAST_MINUTES), step, size);
		return new Axes(fresh, fresh.widened(FLARE_POINTS + luckPoints, luckPoints), FLARE_POINTS, luckPoints);
	}

	/**
	 * Where the first fresh point is on today's grid when there is no luck.
	 * @param flare whether there is a flare
	 * @return the index
	 */
	int firstToday(boolean flare) {
		return this.luckPoints + (flare ? 0 : this.flarePoints);
	}

}

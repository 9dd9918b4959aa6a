package measuredwalk.tolerance;

import measuredwalk.tolerance.filter.GridLaw;

/**
 * Chooses the minutes of each of a day's equal walks from the law of today's tolerance:
 * the most of which the greatest load of the day passes the tolerance with a chance that
 * is small enough. All walks of a day meet the same tolerance, so that several walks are
 * no more likely to pass it than the heaviest of them.
 */
final class Dosing {

	private static final int MOST_WALKS = 8;

	private static final double LONGEST = 240;

	private final ToleranceSettings settings;

	/** For each number of walks, the day's greatest load for each minute of a walk. */
	private final double[] greatest = new double[MOST_WALKS + 1];

	Dosing(ToleranceSettings settings) {
		this.settings = settings;
		for (int walks = 1; walks <= MOST_WALKS; walks++) {
			this.greatest[walks] = greatest(walks);
		}
	}

	/** Walks of the same length, day after day. */
	private double greatest(int walks) {
		CarryOver carryOver = CarryOver.of(this.settings.walking());
		double byDay = carryOver.left(DayWalks.usualGap(walks, this.settings.walking()));
		double overnight = carryOver.left(24 - ((walks > 1) ? this.settings.walking().walkingDay() : 0));
		double load = 1 + overnight;
		double greatest = load;
		for (int walk = 1; walk < walks; walk++) {
			load = 1 + load * byDay;
			greatest = Math.max(greatest, load);
		}
		return greatest;
	}

	/**
	 * The most load that a clean walk of the day counts for in the next dose, though the
	 * belief takes it as told.
	 * @param today the law of the log of today's tolerance
	 * @return the load that passes it with the chance that is allowed
	 */
	double trusted(GridLaw today) {
		return Math.exp(today.quantile(this.settings.dosing().trouble()));
	}

	/**
	 * The largest dose for a whole day.
	 * @param today the law of the log of today's tolerance
	 * @param walks number of equal walks
	 * @param allowed the largest chance that any of them passes the tolerance
	 * @return minutes of each walk
	 */
	double forWholeDay(GridLaw today, int walks, double allowed) {
		double load = Math.exp(today.quantile(allowed));
		return Math.min(LONGEST, load / this.greatest[Math.min(MOST_WALKS, walks)]);
	}

	/**
	 * The largest dose for what is left of a day.
	 * @param today the law of the log of today's tolerance, after the walks so far
	 * @param before the last walk
	 * @param walks number of equal walks left
	 * @param gap hours until and between them
	 * @param allowed the largest chance that any of them passes the tolerance
	 * @return minutes of each walk, at least 1
	 */
	double forRest(GridLaw today, DayWalks.Ended before, int walks, double gap, double allowed) {
		double left = CarryOver.of(this.settings.walking()).left(gap);
		double load = Math.exp(today.quantile(allowed));
		double carried = before.load();
		double perMinute = 0;
		double most = LONGEST;
		for (int walk = 0; walk < walks; walk++) {
			carried *= left;
			perMinute = 1 + perMinute * left;
			most = Math.min(most, (load - carried) / perMinute);
		}
		return Math.max(1, most);
	}

}

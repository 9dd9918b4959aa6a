package measuredwalk.tolerance.simulation;

/**
 * All that there is to know of today before today's luck.
 *
 * @param logMiddle log of the tolerance in the middle of today's luck
 * @param carefulShift the {@link Insight#ALPHA}-quantile of today's luck, in logs
 * @param fatigue how walks carry over
 * @param lastLoad load of the last walk
 * @param lastHour its hour, counted from this midnight (so it is negative)
 */
record Morning(double logMiddle, double carefulShift, Fatigue fatigue, double lastLoad, double lastHour) {

	/** Minutes that a rested dog tolerates in the middle of today's luck. */
	double middleTolerance() {
		return Math.exp(this.logMiddle);
	}

	/** Minutes that a rested dog tolerates but for a chance of {@link Insight#ALPHA}. */
	double carefulTolerance() {
		return Math.exp(this.logMiddle + this.carefulShift);
	}

	double restedTolerance(double innovation, double passing) {
		return Math.exp(this.logMiddle + innovation + passing);
	}

	double carriedFromYesterday(double hour) {
		return this.fatigue.left(this.lastLoad, hour - this.lastHour);
	}

	/**
	 * The most minutes of each of some equal walks of which none passes the tolerance.
	 * @param restedTolerance minutes of a rested dog
	 * @param walks number of walks, 1 or more
	 * @return minutes of each walk, 0 at least
	 */
	double mostMinutes(double restedTolerance, int walks) {
		double[] hours = WalkHours.of(walks);
		double perMinute = 1;
		double carried = carriedFromYesterday(hours[0]);
		double most = restedTolerance - carried;
		for (int walk = 1; walk < walks; walk++) {
			double apart = hours[walk] - hours[walk - 1];
			perMinute = 1 + this.fatigue.left(perMinute, apart);
			carried = this.fatigue.left(carried, apart);
			most = Math.min(most, (restedTolerance - carried) / perMinute);
		}
		return Math.max(0, most);
	}

}

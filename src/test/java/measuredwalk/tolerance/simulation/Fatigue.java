package measuredwalk.tolerance.simulation;

/**
 * How a walk still weighs on the next one. It wears off as one over time, not by halves
 * as the model has it.
 *
 * @param share share of a walk's load that is left at once after it, 0 to 1
 * @param hours hours after which half of that is gone
 */
record Fatigue(double share, double hours) {

	double left(double load, double hoursSince) {
		return this.share * load / (1 + hoursSince / this.hours);
	}

}

package measuredwalk.tolerance;

/** How much of a walk's load is still there when the next one begins. */
record CarryOver(double share, double halvingHours) {

	static CarryOver of(WalkSettings settings) {
		return new CarryOver(settings.carryOver(), settings.carryOverHalving());
	}

	/**
	 * The part that is left.
	 * @param hours hours since the walk ended; negative counts as 0
	 * @return the part, in [0, 1]
	 */
	double left(double hours) {
		return this.share * Math.pow(2, -Math.max(0, hours) / this.halvingHours);
	}

}

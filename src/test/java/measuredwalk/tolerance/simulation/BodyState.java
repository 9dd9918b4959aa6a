package measuredwalk.tolerance.simulation;

/**
 * What a dog wakes up with.
 *
 * @param fitness log shift by training and disuse
 * @param quality log shift of yesterday's quality
 * @param irritation log loss by overload not yet healed
 * @param flare the flare that runs, or none
 * @param lastLoad load of the last walk with what was carried into it, in minutes
 * @param lastHour hour of yesterday at which that was
 */
record BodyState(double fitness, double quality, double irritation, Flare flare, double lastLoad, double lastHour) {

	static final BodyState FRESH = new BodyState(0, 0, 0, Flare.NONE, 0, 18);

	double sorenessShift() {
		return this.irritation + this.flare.logShift();
	}

}

package measuredwalk.tolerance.simulation;

/**
 * A walk as it was.
 *
 * @param hour hour of the day at which it began
 * @param minutes how long it was
 * @param load its minutes with what was carried into it
 * @param loadOverFirstSign load over the load of the first sign: above 1, there was one
 * @param noticedMinute minute at which the owner noticed it, NaN when not
 */
record Walked(double hour, double minutes, double load, double loadOverFirstSign, double noticedMinute) {

	boolean noticed() {
		return !Double.isNaN(this.noticedMinute);
	}

}

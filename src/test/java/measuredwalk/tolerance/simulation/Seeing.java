package measuredwalk.tolerance.simulation;

/**
 * What an owner notices.
 *
 * @param walks chance of noticing a sign on a walk that goes a little over
 * @param mornings chance of noticing a stiff morning
 * @param falseAlarms chance of telling of a sign that was none, on a walk or a morning
 * @param lagMinutes mean minutes from the first sign to its being noticed
 */
record Seeing(double walks, double mornings, double falseAlarms, double lagMinutes) {

	/** The further past the tolerance, the plainer the sign. */
	double noticing(double loadOverFirstSign) {
		double plainness = Math.max(0.75, Math.min(2, 0.75 + 2.5 * Math.log(loadOverFirstSign)));
		return 1 - Math.pow(1 - this.walks, plainness);
	}

}

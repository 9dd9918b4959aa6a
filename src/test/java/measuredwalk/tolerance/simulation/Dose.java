package measuredwalk.tolerance.simulation;

/**
 * What a policy suggests.
 *
 * @param walks number of walks
 * @param minutes minutes of each
 * @param chance the chance that the policy gives for one walk of that length to pass the
 * tolerance, NaN when it gives none
 * @param low tenth percentile of its belief about today's tolerance, NaN when it has none
 * @param middle median of that belief
 * @param high ninetieth percentile of that belief
 * @param reason what decided it, empty when the policy gives no reasons
 */
record Dose(int walks, double minutes, double chance, double low, double middle, double high, String reason) {

	static Dose of(int walks, double minutes) {
		return new Dose(walks, minutes, Double.NaN, Double.NaN, Double.NaN, Double.NaN, "");
	}

}

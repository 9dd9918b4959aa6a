package measuredwalk.tolerance.simulation;

/**
 * The standard normal law, written apart from the model's own so that neither can copy
 * the other's error.
 */
final class NormalLaw {

	private static final double FAR = 8;

	private NormalLaw() {
	}

	/**
	 * Chance of at most z, by Marsaglia's series (Journal of Statistical Software 11:4,
	 * 2004; from memory).
	 */
	static double below(double z) {
		if (Math.abs(z) > FAR) {
			return (z < 0) ? 0 : 1;
		}
		double sum = z;
		double term = z;
		for (int odd = 3; Math.abs(term) > 1e-17; odd += 2) {
			term *= z * z / odd;
			sum += term;
		}
		return 0.5 + sum * Math.exp(-z * z / 2) / Math.sqrt(2 * Math.PI);
	}

	static double quantile(double p) {
		return Quantiles.invert(NormalLaw::below, p, -FAR, FAR);
	}

}

package measuredwalk.tolerance;

/**
 * A likelihood for one owner class, as values that several classes may share and a factor
 * of its own.
 *
 * @param today for each of today's tolerances
 * @param factor for all of them
 */
@SuppressWarnings("ArrayRecordComponent")
record ClassLikelihood(double[] today, double factor) {

	boolean shares(ClassLikelihood other) {
		return this.today == other.today;
	}

}

package measuredwalk.tolerance;

/**
 * Whether the chances that were given came true for one dog: signs told of walks, less
 * the chances of them that the morning's belief gave. Each chance is given before the
 * walk is seen, so that under the model the sum has mean 0 (Dawid 1984, J R Stat Soc A
 * 147:278, the prequential view; from memory). Walks of a day share its luck: their
 * variances are added up as if they were wholly alike, which is the most that they can
 * be.
 *
 * @param excess faded sum of signs seen less signs expected
 * @param variance faded sum of the variances
 */
record PredictiveCheck(double excess, double variance) {

	static final PredictiveCheck NONE = new PredictiveCheck(0, 0);

	/**
	 * The check with one more day.
	 * @param more signs seen less signs expected
	 * @param with their variance
	 * @param settings how fast old days fade
	 * @return the check
	 */
	PredictiveCheck with(double more, double with, CheckSettings settings) {
		double fade = Math.pow(2, -1 / settings.memory());
		return new PredictiveCheck(fade * this.excess + more, fade * fade * this.variance + with);
	}

	/**
	 * How much the model doubts itself. Only trouble that it did not foretell counts: for
	 * a dog that does better than foretold nothing needs to be taken back, and growth is
	 * limited anyway.
	 * @param settings the bounds
	 * @return from 0 for not at all to 1
	 */
	double doubt(CheckSettings settings) {
		if (this.variance < settings.enough()) {
			return 0;
		}
		double standardised = this.excess / Math.sqrt(this.variance);
		return Math.max(0, Math.min(1, (standardised - settings.from()) / (settings.full() - settings.from())));
	}

	/** Standard deviation of log tolerance to add to today's law. */
	double widening(CheckSettings settings) {
		return settings.widest() * doubt(settings);
	}

}

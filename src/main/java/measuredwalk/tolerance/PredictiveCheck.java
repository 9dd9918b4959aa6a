package measuredwalk.tolerance;

/**
 * Whether the chances that were given came true for one dog: day by day, whether a sign
 * was told of the heaviest walk, less the chance of it that the morning's belief gave.
 * Each chance is given before the walk is seen, so that under the model the sum has mean
 * 0 and the variance kept here (Dawid 1984, J R Stat Soc A 147:278, the prequential view;
 * from memory).
 *
 * @param excess faded sum of signs seen less signs expected
 * @param variance faded sum of the variances
 */
record PredictiveCheck(double excess, double variance) {

	static final PredictiveCheck NONE = new PredictiveCheck(0, 0);

	PredictiveCheck with(double chance, boolean seen, CheckSettings settings) {
		double fade = Math.pow(2, -1 / settings.memory());
		return new PredictiveCheck(fade * this.excess + (seen ? 1 : 0) - chance,
				fade * fade * this.variance + chance * (1 - chance));
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

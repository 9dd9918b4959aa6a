package measuredwalk.tolerance.filter;

/**
 * The chance that an effect shows by a dose, for every threshold on a grid of log
 * thresholds: Phi((ln dose - log threshold) / spread).
 *
 * <p>
 * With no spread in the threshold itself it is the log-normal failure model of
 * reliability engineering; effect by a dose is a left-censored, no effect a
 * right-censored, and effect between two doses an interval-censored observation (Meeker
 * and Escobar 1998, chapters 7 and 8).
 */
public final class ThresholdCurve {

	private final Grid logThresholds;

	private final double spread;

	private final FallingNormal falling;

	/**
	 * The curve.
	 * @param logThresholds natural logarithms of the thresholds
	 * @param spread standard deviation of the log dose at which the effect shows, above 0
	 */
	public ThresholdCurve(Grid logThresholds, double spread) {
		this.logThresholds = logThresholds;
		this.spread = spread;
		this.falling = new FallingNormal(logThresholds.step() / spread);
	}

	/**
	 * Number of thresholds.
	 * @return how many
	 */
	public int size() {
		return this.logThresholds.size();
	}

	/**
	 * The chance that the effect shows by a dose.
	 * @param dose the dose, at least 0
	 * @return for each threshold the chance
	 */
	public double[] by(double dose) {
		double[] chances = new double[this.logThresholds.size()];
		if (dose > 0) {
			this.falling.fill((Math.log(dose) - this.logThresholds.start()) / this.spread, chances);
		}
		return chances;
	}

	/**
	 * The chance that the effect has not shown by a dose, exact where it is small.
	 * @param dose the dose, at least 0
	 * @return for each threshold the chance
	 */
	public double[] notBy(double dose) {
		double[] chances = new double[this.logThresholds.size()];
		double first = (this.logThresholds.start() - Math.log(dose)) / this.spread;
		for (int i = 0; i < chances.length; i++) {
			chances[i] = NormalCurve.below(first + i * this.logThresholds.step() / this.spread);
		}
		return chances;
	}

	/**
	 * The chance that the effect shows after one dose and by another.
	 * @param after the lower dose, at least 0
	 * @param by the higher dose
	 * @return for each threshold the chance
	 */
	public double[] between(double after, double by) {
		double[] chances = by(by);
		double[] before = by(after);
		for (int i = 0; i < chances.length; i++) {
			chances[i] = Math.max(0, chances[i] - before[i]);
		}
		return chances;
	}

}

package measuredwalk.tolerance.simulation;

/**
 * Heavy-tailed news of the day (Student's law with four degrees of freedom) and a
 * log-logistic rest: the harder law.
 *
 * @param spread standard deviation of the lasting part
 * @param logisticScale scale of the logistic passing part; its standard deviation is 1.81
 * times as much
 */
record HeavyTailedDay(double spread, double logisticScale) implements DayLaw {

	private static final int STEPS = 160;

	private static final double[] STUDENT = studentMiddles();

	@Override
	public double innovation(Luck luck) {
		return this.spread * luck.heavyTailed();
	}

	@Override
	public double passing(Luck luck) {
		return this.logisticScale * luck.logistic();
	}

	@Override
	public double quantile(double p) {
		return Quantiles.invert(this::below, p, -5, 5);
	}

	private double below(double shift) {
		double sum = 0;
		for (double student : STUDENT) {
			sum += 1 / (1 + Math.exp((this.spread * student - shift) / this.logisticScale));
		}
		return sum / STEPS;
	}

	private static double[] studentMiddles() {
		double[] middles = new double[STEPS];
		for (int step = 0; step < STEPS; step++) {
			middles[step] = studentQuantile((step + 0.5) / STEPS) / Math.sqrt(2);
		}
		return middles;
	}

	/**
	 * Quantile of Student's law with four degrees of freedom in closed form (Shaw 2006,
	 * Journal of Computational Finance 9:4; from memory).
	 */
	static double studentQuantile(double p) {
		double a = 4 * p * (1 - p);
		double q = Math.cos(Math.acos(Math.sqrt(a)) / 3) / Math.sqrt(a);
		return Math.signum(p - 0.5) * 2 * Math.sqrt(q - 1);
	}

}

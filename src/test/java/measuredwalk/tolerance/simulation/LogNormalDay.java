package measuredwalk.tolerance.simulation;

/**
 * A tolerance that is log-normal from day to day: the milder law.
 *
 * @param spread standard deviation of log tolerance in a day
 */
record LogNormalDay(double spread) implements DayLaw {

	@Override
	public double innovation(Luck luck) {
		return this.spread * luck.gaussian();
	}

	@Override
	public double passing(Luck luck) {
		return 0;
	}

	@Override
	public double quantile(double p) {
		return this.spread * NormalLaw.quantile(p);
	}

}

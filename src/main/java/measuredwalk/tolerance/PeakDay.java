package measuredwalk.tolerance;

/** No day far above the dog's own mean of the last two weeks. */
record PeakDay(LimitSettings settings) implements Limit {

	private static final int DAYS = 14;

	@Override
	public double most(Situation situation) {
		double total = 0;
		for (int ago = 1; ago <= DAYS; ago++) {
			PastDay day = situation.day(ago);
			total += (day != null) ? day.total() : situation.plan().planMinutes() * situation.plan().walksPerDay();
		}
		return this.settings.peak() * total / DAYS / situation.plan().walksPerDay();
	}

	@Override
	public Reason reason() {
		return Reason.NO_PEAK_DAY;
	}

}

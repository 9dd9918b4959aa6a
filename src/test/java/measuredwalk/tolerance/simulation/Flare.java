package measuredwalk.tolerance.simulation;

/**
 * A flare: worse than usual for days, then well again.
 *
 * @param depth how far log tolerance is down at its worst
 * @param days how long it lasts
 * @param age days since it began
 */
record Flare(double depth, double days, int age) {

	static final Flare NONE = new Flare(0, 1, 1);

	/**
	 * A new one. The length has the median of 5 days and quartiles of 3 and 8 of flares
	 * in people (Thomas 2021, Osteoarthritis Cartilage); the depth of 25 to 50 % is a
	 * guess around the model's own.
	 */
	static Flare begin(Luck luck) {
		double days = Math.min(30, 5 * Math.exp(0.727 * luck.gaussian()));
		return new Flare(-Math.log(1 - luck.between(0.25, 0.50)), Math.max(1, days), 0);
	}

	double logShift() {
		double gone = this.age / this.days;
		return (gone >= 1) ? 0 : this.depth * (1 - gone * gone);
	}

	Flare dayLater() {
		return (logShift() == 0) ? NONE : new Flare(this.depth, this.days, this.age + 1);
	}

}

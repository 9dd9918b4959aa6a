package measuredwalk.tolerance.simulation;

/**
 * How a dog pays for too much.
 *
 * @param healing share of the irritation that heals in a day
 * @param gain irritation per log of overload
 * @param flareChance chance in a day of a flare that comes by itself
 * @param flareAfterOverload chance of a flare after a load of 1.5 times the tolerance
 */
record Soreness(double healing, double gain, double flareChance, double flareAfterOverload) {

	/**
	 * Irritation cannot take more than half of the tolerance: worse is an emergency, not
	 * a walk's question.
	 */
	private static final double MOST = Math.log(2);

	private static final double MUCH_TOO_MUCH = 1.5;

	double irritationNext(double irritation, double loadRatio) {
		double fed = this.gain * Math.max(0, Math.log(loadRatio));
		return Math.min(MOST, (irritation + fed) * (1 - this.healing));
	}

	Flare flareNext(Flare flare, double loadRatio, Luck luck) {
		boolean begins = luck.happens(this.flareChance + ((loadRatio > MUCH_TOO_MUCH) ? this.flareAfterOverload : 0));
		Flare fresh = Flare.begin(luck);
		Flare older = flare.dayLater();
		return (begins && fresh.logShift() > older.logShift()) ? fresh : older;
	}

}

package measuredwalk.tolerance;

import measuredwalk.tolerance.filter.ThresholdCurve;

/** How likely a flare begins overnight after too much, by today's tolerance. */
final class FlareMoves {

	private final FlareSettings settings;

	private final ThresholdCurve curve;

	FlareMoves(FlareSettings settings, ThresholdCurve curve) {
		this.settings = settings;
		this.curve = curve;
	}

	/**
	 * The chances that a flare begins after a load, or that none does.
	 * @param begins whether one begins
	 * @param load today's greatest load
	 * @return for each of today's tolerances the chance
	 */
	double[] beginning(boolean begins, double load) {
		double[] chances = this.curve.by(load / this.settings.overload());
		for (int i = 0; i < chances.length; i++) {
			double flare = this.settings.startChance() + this.settings.afterOverloadChance() * chances[i];
			chances[i] = begins ? flare : 1 - flare;
		}
		return chances;
	}

}

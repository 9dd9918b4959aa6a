package measuredwalk.tolerance;

import measuredwalk.tolerance.filter.ThresholdCurve;

/** How likely a flare begins, stays or passes overnight, by today's tolerance. */
final class FlareMoves {

	private final FlareSettings settings;

	private final ThresholdCurve curve;

	FlareMoves(FlareSettings settings, ThresholdCurve curve) {
		this.settings = settings;
		this.curve = curve;
	}

	/**
	 * The chances of one move.
	 * @param from whether there is a flare today
	 * @param to whether there is one tomorrow
	 * @param load today's greatest load, 0 when unknown
	 * @return for each of today's tolerances the chance
	 */
	double[] chances(boolean from, boolean to, double load) {
		double[] chances = this.curve.by(from ? 0 : load / this.settings.overload());
		for (int i = 0; i < chances.length; i++) {
			double flare = from ? this.settings.stayChance()
					: this.settings.startChance() + this.settings.afterOverloadChance() * chances[i];
			chances[i] = to ? flare : 1 - flare;
		}
		return chances;
	}

}

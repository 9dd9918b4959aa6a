package measuredwalk.tolerance;

import java.util.Arrays;

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
	 * The chances that there is a flare tomorrow.
	 * @param from whether there is a flare today
	 * @param load today's greatest load, 0 when unknown
	 * @return for each of today's tolerances the chance
	 */
	double[] flare(boolean from, double load) {
		double[] chances = this.curve.by(from ? 0 : load / this.settings.overload());
		if (from) {
			Arrays.fill(chances, this.settings.stayChance());
			return chances;
		}
		for (int i = 0; i < chances.length; i++) {
			chances[i] = this.settings.startChance() + this.settings.afterOverloadChance() * chances[i];
		}
		return chances;
	}

}

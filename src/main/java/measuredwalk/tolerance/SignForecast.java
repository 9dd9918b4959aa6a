package measuredwalk.tolerance;

import measuredwalk.tolerance.filter.Grid;
import measuredwalk.tolerance.filter.PointMasses;
import measuredwalk.tolerance.filter.ThresholdCurve;

/**
 * The chance, before a walk, that a sign will be told of it. The scatter of a walk and
 * the luck of a day are both normal in logs, so that their sum is and no average over
 * luck is needed.
 */
final class SignForecast {

	private final OwnerSettings owners;

	private final ThresholdCurve curve;

	private final int flarePoints;

	SignForecast(ToleranceSettings settings, Axes axes) {
		WalkSettings walking = settings.walking();
		Grid grid = axes.fresh().widened(axes.flarePoints(), 0);
		this.owners = settings.owners();
		this.curve = new ThresholdCurve(grid, Math.hypot(walking.onsetDeviation(), walking.dayDeviation()));
		this.flarePoints = axes.flarePoints();
	}

	/**
	 * The chance of a sign.
	 * @param belief the belief of that morning
	 * @param load the walk's load
	 * @return the chance, in [0, 1]
	 */
	double chance(PointMasses belief, double load) {
		double[] passes = this.curve.by(load);
		double chance = 0;
		for (int flare = 0; flare < 2; flare++) {
			double[] seen = new double[belief.grid().size()];
			double[] falseAlarms = new double[seen.length];
			for (int ownerClass = 0; ownerClass < this.owners.classes(); ownerClass++) {
				double falseAlarm = this.owners.mildFalseAlarm(ownerClass);
				belief.addScaledTo(2 * ownerClass + flare, seen, (1 - falseAlarm) * this.owners.seen(ownerClass));
				belief.addScaledTo(2 * ownerClass + flare, falseAlarms, falseAlarm);
			}
			int start = (flare == 1) ? 0 : this.flarePoints;
			for (int i = belief.low(); i < belief.high(); i++) {
				chance += falseAlarms[i] + seen[i] * passes[start + i];
			}
		}
		return Math.max(0, Math.min(1, chance));
	}

}

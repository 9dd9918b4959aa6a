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
	 * What a morning's belief foretells.
	 * @param belief the belief
	 * @return the forecast for walks of any load
	 */
	OfMorning of(PointMasses belief) {
		double[][] seen = new double[2][belief.grid().size()];
		double[] falseAlarms = new double[belief.grid().size()];
		for (int kind = 0; kind < belief.kinds(); kind++) {
			double falseAlarm = this.owners.mildFalseAlarm(kind / 2);
			belief.addScaledTo(kind, seen[kind % 2], (1 - falseAlarm) * this.owners.seen(kind / 2));
			belief.addScaledTo(kind, falseAlarms, falseAlarm);
		}
		double imagined = 0;
		for (double mass : falseAlarms) {
			imagined += mass;
		}
		return new OfMorning(seen, imagined);
	}

	/** The forecast of one morning. */
	final class OfMorning {

		/** Mass without and with a flare, weighed by how often trouble is seen. */
		private final double[][] seen;

		private final double imagined;

		private OfMorning(double[][] seen, double imagined) {
			this.seen = seen;
			this.imagined = imagined;
		}

		/**
		 * The chance of a sign.
		 * @param load the walk's load
		 * @return the chance, in [0, 1]
		 */
		double chance(double load) {
			double[] passes = SignForecast.this.curve.by(load);
			double usual = sum(this.seen[0], passes, SignForecast.this.flarePoints);
			double inFlare = sum(this.seen[1], passes, 0);
			return Math.max(0, Math.min(1, this.imagined + usual + inFlare));
		}

		private static double sum(double[] weights, double[] values, int start) {
			double sum = 0;
			for (int i = 0; i < weights.length; i++) {
				sum += weights[i] * values[start + i];
			}
			return sum;
		}

	}

}

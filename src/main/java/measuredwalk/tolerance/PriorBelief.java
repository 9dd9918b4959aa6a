package measuredwalk.tolerance;

import measuredwalk.tolerance.filter.Grid;
import measuredwalk.tolerance.filter.PointMasses;

/** The belief before anything is known but the clinic's plan. */
final class PriorBelief {

	private final ToleranceSettings settings;

	private final Grid fresh;

	PriorBelief(ToleranceSettings settings, Grid fresh) {
		this.settings = settings;
		this.fresh = fresh;
	}

	PointMasses of(double planMinutes) {
		double mean = Math.log(planMinutes * this.settings.drift().priorFactor());
		double[][] masses = new double[2 * this.settings.owners().classes()][this.fresh.size()];
		for (int kind = 0; kind < masses.length; kind++) {
			fill(masses[kind], weight(kind), mean);
		}
		return PointMasses.of(this.fresh, masses);
	}

	private double weight(int kind) {
		double flare = this.settings.drift().priorFlare();
		return this.settings.owners().prior(kind / 2) * ((kind % 2 == 1) ? flare : 1 - flare);
	}

	private void fill(double[] masses, double weight, double mean) {
		for (int i = 0; i < masses.length; i++) {
			double z = (this.fresh.at(i) - mean) / this.settings.drift().priorDeviation();
			masses[i] = weight * Math.exp(-z * z / 2);
		}
	}

}

package measuredwalk.tolerance;

import java.util.List;

import measuredwalk.tolerance.filter.ThresholdCurve;

/** The chance of what was told of a day's walks, by owner class and today's tolerance. */
final class WalkLikelihood {

	private final OwnerSettings owners;

	private final ThresholdCurve curve;

	WalkLikelihood(OwnerSettings owners, ThresholdCurve curve) {
		this.owners = owners;
		this.curve = curve;
	}

	/**
	 * All of a day's walks together.
	 * @param walks the walks; at least one
	 * @return for each owner class the likelihood of each of today's tolerances
	 */
	double[][] of(List<WalkEvidence> walks) {
		double[][] all = new double[this.owners.classes()][];
		for (WalkEvidence walk : walks) {
			double[] shown = walk.hasSigns() ? this.curve.between(walk.onsetAfter(), walk.onsetBy())
					: this.curve.by(walk.total());
			for (int ownerClass = 0; ownerClass < all.length; ownerClass++) {
				all[ownerClass] = product(all[ownerClass], ofClass(walk, shown, ownerClass));
			}
		}
		return all;
	}

	private double[] ofClass(WalkEvidence walk, double[] shown, int ownerClass) {
		double seen = this.owners.seen(ownerClass);
		double falseAlarm = falseAlarm(walk, ownerClass);
		double slope = walk.hasSigns() ? seen : -seen * (1 - falseAlarm);
		double level = walk.hasSigns() ? falseAlarm * walk.windowShare() : 1 - falseAlarm;
		double[] told = new double[shown.length];
		for (int i = 0; i < told.length; i++) {
			told[i] = level + slope * shown[i];
		}
		if (walk.late()) {
			for (int i = 0; i < told.length; i++) {
				told[i] = Math.pow(told[i], this.owners.latePower());
			}
		}
		return told;
	}

	private double falseAlarm(WalkEvidence walk, int ownerClass) {
		return switch (walk.grade()) {
			case 0, 1 -> this.owners.mildFalseAlarm(ownerClass);
			case 2 -> this.owners.clearFalseAlarm();
			default -> this.owners.severeFalseAlarm();
		};
	}

	private static double[] product(double @org.jspecify.annotations.Nullable [] soFar, double[] next) {
		if (soFar == null) {
			return next;
		}
		for (int i = 0; i < next.length; i++) {
			soFar[i] *= next[i];
		}
		return soFar;
	}

}

package measuredwalk.tolerance;

import java.util.ArrayList;
import java.util.Arrays;
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
	 * All of a day's walks together. Without signs, classes that differ only in false
	 * alarms differ only by a factor, and share their values.
	 * @param walks the walks
	 * @return one likelihood for each owner class, in order
	 */
	List<ClassLikelihood> of(List<WalkEvidence> walks) {
		List<double[]> shown = new ArrayList<>(walks.size());
		boolean clean = true;
		for (WalkEvidence walk : walks) {
			shown.add(shown(walk));
			clean &= !walk.hasSigns();
		}
		List<ClassLikelihood> all = new ArrayList<>();
		for (int ownerClass = 0; ownerClass < this.owners.classes(); ownerClass++) {
			boolean shared = ownerClass > 0 && ((clean && sameSeen(ownerClass)) || walks.isEmpty());
			double[] today = shared ? all.get(ownerClass - 1).today() : ones();
			double factor = 1;
			for (int i = 0; i < walks.size(); i++) {
				factor *= factor(walks.get(i), ownerClass);
				if (!shared) {
					multiply(today, walks.get(i), shown.get(i), ownerClass);
				}
			}
			all.add(new ClassLikelihood(today, factor));
		}
		return all;
	}

	private boolean sameSeen(int ownerClass) {
		return this.owners.seen(ownerClass) == this.owners.seen(ownerClass - 1);
	}

	private double[] ones() {
		double[] ones = new double[this.curve.size()];
		Arrays.fill(ones, 1);
		return ones;
	}

	private double[] shown(WalkEvidence walk) {
		return walk.hasSigns() ? this.curve.between(walk.onsetAfter(), walk.onsetBy()) : this.curve.by(walk.total());
	}

	/** What a clean walk says of false alarms, whatever the tolerance. */
	private double factor(WalkEvidence walk, int ownerClass) {
		double factor = walk.hasSigns() ? 1 : 1 - falseAlarm(walk, ownerClass);
		return walk.late() ? Math.pow(factor, this.owners.latePower()) : factor;
	}

	private void multiply(double[] today, WalkEvidence walk, double[] shown, int ownerClass) {
		double seen = this.owners.seen(ownerClass);
		double slope = walk.hasSigns() ? seen : -seen;
		double level = walk.hasSigns() ? falseAlarm(walk, ownerClass) * walk.windowShare() : 1;
		if (walk.late()) {
			for (int i = 0; i < today.length; i++) {
				today[i] *= Math.pow(level + slope * shown[i], this.owners.latePower());
			}
		}
		else {
			multiply(today, shown, level, slope);
		}
	}

	/** Alone in its method, so that the compiler makes vector instructions of it. */
	private static void multiply(double[] today, double[] shown, double level, double slope) {
		for (int i = 0; i < today.length; i++) {
			today[i] *= level + slope * shown[i];
		}
	}

	private double falseAlarm(WalkEvidence walk, int ownerClass) {
		return switch (walk.grade()) {
			case 0, 1 -> this.owners.mildFalseAlarm(ownerClass);
			case 2 -> this.owners.clearFalseAlarm();
			default -> this.owners.severeFalseAlarm();
		};
	}

}

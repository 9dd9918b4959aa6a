package measuredwalk.tolerance;

import measuredwalk.tolerance.filter.Grid;
import measuredwalk.tolerance.filter.GridLaw;
import measuredwalk.tolerance.filter.NormalCurve;

/**
 * The chance that at least one of a day's equal walks passes the tolerance, by how far
 * the log of a walk's minutes is above the log of the tolerance. Kept as a table on the
 * grid's step, so that choosing a dose is a matter of sums.
 */
final class TroubleCurve {

	private static final int REACH = 80;

	private final double[] table = new double[2 * REACH + 1];

	/**
	 * The curve.
	 * @param multiples load of each walk as a multiple of its minutes
	 * @param deviation standard deviation of the log minute at which a sign shows
	 * @param step the grid's step
	 */
	TroubleCurve(double[] multiples, double deviation, double step) {
		for (int i = 0; i < this.table.length; i++) {
			double clean = 1;
			for (double multiple : multiples) {
				clean *= NormalCurve.below(-((i - REACH) * step + Math.log(multiple)) / deviation);
			}
			this.table[i] = 1 - clean;
		}
	}

	/**
	 * The largest log dose whose chance is small enough.
	 * @param law the law of the log of today's tolerance
	 * @param allowed the largest chance allowed
	 * @return the log of the minutes, never under the grid's first point
	 */
	double largest(GridLaw law, double allowed) {
		Grid grid = law.grid();
		int safe = 0;
		int unsafe = grid.size() - 1;
		double safeChance = chance(law, safe);
		double unsafeChance = chance(law, unsafe);
		if (safeChance >= allowed || unsafeChance <= allowed) {
			return grid.at((safeChance >= allowed) ? safe : unsafe);
		}
		while (unsafe - safe > 1) {
			int middle = (safe + unsafe) / 2;
			double chance = chance(law, middle);
			if (chance <= allowed) {
				safe = middle;
				safeChance = chance;
			}
			else {
				unsafe = middle;
				unsafeChance = chance;
			}
		}
		return grid.at(safe) + grid.step() * (allowed - safeChance) / (unsafeChance - safeChance);
	}

	private double chance(GridLaw law, int dose) {
		double chance = 0;
		int size = law.grid().size();
		int sure = Math.max(0, dose - REACH);
		for (int i = 0; i < sure; i++) {
			chance += law.mass(i);
		}
		int last = Math.min(size - 1, dose + REACH);
		for (int i = sure; i <= last; i++) {
			chance += law.mass(i) * this.table[dose - i + REACH];
		}
		return chance;
	}

}

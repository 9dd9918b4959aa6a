package measuredwalk.tolerance;

import java.util.Arrays;
import java.util.List;

import measuredwalk.tolerance.filter.Bench;
import measuredwalk.tolerance.filter.GridLaw;
import measuredwalk.tolerance.filter.PointMasses;

/** Today's tolerance, with flare and luck, as a belief and today's walks have it. */
final class TodayLaw {

	private final LuckOfDay luck;

	private final WalkLikelihood walkLikelihood;

	TodayLaw(LuckOfDay luck, WalkLikelihood walkLikelihood) {
		this.luck = luck;
		this.walkLikelihood = walkLikelihood;
	}

	/**
	 * Today's tolerance before any walk.
	 * @param belief the belief of this morning
	 * @return the law of the log of today's tolerance in minutes
	 */
	GridLaw of(PointMasses belief) {
		double[] placed = row();
		double[] today = row();
		place(belief.summed(0, 2), placed, false);
		place(belief.summed(1, 2), placed, true);
		this.luck.move(placed, today, 1, this.luck.bench());
		return new GridLaw(this.luck.axes().today(), today);
	}

	/**
	 * Today's tolerance after what was told of today's walks.
	 * @param belief the belief of this morning
	 * @param walks what was told
	 * @return the law of the log of today's tolerance in minutes
	 */
	GridLaw of(PointMasses belief, DayWalks walks) {
		if (walks.evidence().isEmpty()) {
			return of(belief);
		}
		double[] today = row();
		double[] placed = row();
		double[] moved = row();
		Bench bench = this.luck.bench();
		List<ClassLikelihood> told = this.walkLikelihood.of(walks.evidence());
		for (int ownerClass = 0; ownerClass < told.size(); ownerClass++) {
			Arrays.fill(placed, 0);
			Arrays.fill(moved, 0);
			place(belief, ownerClass, placed);
			this.luck.move(placed, moved, told.get(ownerClass).factor(), bench);
			addProduct(today, moved, told.get(ownerClass).today());
		}
		return new GridLaw(this.luck.axes().today(), today);
	}

	private double[] row() {
		return new double[this.luck.axes().today().size()];
	}

	private void place(PointMasses belief, int ownerClass, double[] placed) {
		belief.addTo(2 * ownerClass, placed, this.luck.axes().firstToday(false));
		belief.addTo(2 * ownerClass + 1, placed, this.luck.axes().firstToday(true));
	}

	private void place(double[] masses, double[] placed, boolean flare) {
		int start = this.luck.axes().firstToday(flare);
		for (int i = 0; i < masses.length; i++) {
			placed[start + i] += masses[i];
		}
	}

	private static void addProduct(double[] sum, double[] one, double[] other) {
		for (int i = 0; i < sum.length; i++) {
			sum[i] += one[i] * other[i];
		}
	}

}

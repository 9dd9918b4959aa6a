package measuredwalk.tolerance;

import java.util.ArrayList;
import java.util.List;

import measuredwalk.tolerance.filter.Drift;
import measuredwalk.tolerance.filter.GridLaw;
import measuredwalk.tolerance.filter.Kernel;
import measuredwalk.tolerance.filter.KindMove;
import measuredwalk.tolerance.filter.PointMasses;
import measuredwalk.tolerance.filter.ThresholdCurve;
import org.jspecify.annotations.Nullable;

/**
 * Moves the belief about a dog from one morning to the next. A belief is the fresh
 * tolerance on a grid for each kind of dog: owner class, in a flare or not.
 */
final class BeliefFilter {

	private final ToleranceSettings settings;

	private final Axes axes;

	private final Kernel luck;

	private final Drift drift;

	private final Drift driftAfterMedicine;

	private final WalkLikelihood walkLikelihood;

	private final ThresholdCurve overload;

	private final FlareMoves flareMoves;

	BeliefFilter(ToleranceSettings settings) {
		this.settings = settings;
		double step = Axes.step(settings);
		this.luck = Kernel.normal(0, settings.walking().dayDeviation(), step);
		this.axes = Axes.of(settings, this.luck.reach());
		this.drift = drift(settings.drift(), settings.drift().dailyDeviation(), step);
		this.driftAfterMedicine = drift(settings.drift(), settings.drift().afterMedicineDeviation(), step);
		ThresholdCurve onset = new ThresholdCurve(this.axes.today(), settings.walking().onsetDeviation());
		this.walkLikelihood = new WalkLikelihood(settings.owners(), onset);
		this.overload = new ThresholdCurve(this.axes.today(), settings.mornings().overloadDeviation());
		this.flareMoves = new FlareMoves(settings.flares(), onset);
	}

	private static Drift drift(DriftSettings settings, double daily, double step) {
		return new Drift(
				List.of(new Drift.Step(1 - settings.dropChance(), Kernel.normal(0, daily, step)), new Drift.Step(
						settings.dropChance(), Kernel.normal(settings.dropMean(), settings.dropDeviation(), step))));
	}

	Axes axes() {
		return this.axes;
	}

	/**
	 * The belief before anything is known.
	 * @param planMinutes minutes of the clinic's plan
	 * @return the belief
	 */
	PointMasses prior(double planMinutes) {
		DriftSettings prior = this.settings.drift();
		double mean = Math.log(planMinutes * prior.priorFactor());
		double[][] masses = new double[2 * this.settings.owners().classes()][this.axes.fresh().size()];
		for (int kind = 0; kind < masses.length; kind++) {
			double weight = this.settings.owners().prior(kind / 2)
					* (isFlare(kind) ? prior.priorFlare() : 1 - prior.priorFlare());
			for (int i = 0; i < masses[kind].length; i++) {
				double z = (this.axes.fresh().at(i) - mean) / prior.priorDeviation();
				masses[kind][i] = weight * Math.exp(-z * z / 2);
			}
		}
		return PointMasses.of(this.axes.fresh(), masses);
	}

	private static boolean isFlare(int kind) {
		return kind % 2 == 1;
	}

	/**
	 * The belief of the next morning.
	 * @param belief the belief of this morning
	 * @param walks what was told of today's walks
	 * @param morning the next morning's likelihood, or null when it was not told
	 * @param afterMedicine whether a medicine was changed lately
	 * @return the belief
	 */
	PointMasses overnight(PointMasses belief, DayWalks walks, @Nullable MorningLikelihood morning,
			boolean afterMedicine) {
		PointMasses weighed = belief.moved(moves(walks, morning)).normalised();
		boolean silent = morning == null && walks.evidence().isEmpty();
		double widest = this.settings.drift().widest();
		if (silent && weighed.law().variance() > widest * widest) {
			return weighed;
		}
		return weighed.drifted(afterMedicine ? this.driftAfterMedicine : this.drift).normalised();
	}

	private List<KindMove> moves(DayWalks walks, @Nullable MorningLikelihood morning) {
		double[] @Nullable [] told = walks.evidence().isEmpty() ? null : this.walkLikelihood.of(walks.evidence());
		List<KindMove> moves = new ArrayList<>();
		for (boolean from : new boolean[] { false, true }) {
			for (boolean to : new boolean[] { false, true }) {
				double[] common = this.flareMoves.chances(from, to, walks.load());
				if (morning != null) {
					multiply(common, morning.of(this.overload, walks.load(), to));
				}
				addMoves(moves, from, to, common, told);
			}
		}
		return moves;
	}

	private void addMoves(List<KindMove> moves, boolean from, boolean to, double[] common, double[] @Nullable [] told) {
		double[] shared = (told != null) ? null : overLuck(common, from);
		for (int ownerClass = 0; ownerClass < this.settings.owners().classes(); ownerClass++) {
			double[] likelihood = shared;
			if (likelihood == null) {
				double[] today = common.clone();
				multiply(today, java.util.Objects.requireNonNull(told)[ownerClass]);
				likelihood = overLuck(today, from);
			}
			moves.add(new KindMove(2 * ownerClass + (from ? 1 : 0), 2 * ownerClass + (to ? 1 : 0), likelihood));
		}
	}

	private double[] overLuck(double[] today, boolean flare) {
		double[] fresh = new double[this.axes.fresh().size()];
		this.luck.expect(today, this.axes.firstToday(flare), fresh, fresh.length);
		return fresh;
	}

	private static void multiply(double[] into, double[] by) {
		for (int i = 0; i < into.length; i++) {
			into[i] *= by[i];
		}
	}

	/**
	 * Today's tolerance, with flare and luck, after what was told of today's walks.
	 * @param belief the belief of this morning
	 * @param walks what was told of today's walks so far
	 * @return the law of the log of today's tolerance in minutes
	 */
	GridLaw today(PointMasses belief, DayWalks walks) {
		double[] @Nullable [] told = walks.evidence().isEmpty() ? null : this.walkLikelihood.of(walks.evidence());
		double[] today = new double[this.axes.today().size()];
		int groups = (told != null) ? told.length : 1;
		for (int group = 0; group < groups; group++) {
			double[] placed = placed(belief, (told != null) ? group : -1);
			double[] moved = new double[placed.length];
			this.luck.move(placed, 0, moved, 0, placed.length, 1);
			for (int i = 0; i < today.length; i++) {
				today[i] += (told != null) ? moved[i] * told[group][i] : moved[i];
			}
		}
		return new GridLaw(this.axes.today(), today);
	}

	/** Masses on today's grid without luck, of one owner class or of all for -1. */
	private double[] placed(PointMasses belief, int ownerClass) {
		double[] placed = new double[this.axes.today().size()];
		for (int kind = 0; kind < belief.kinds(); kind++) {
			if (ownerClass < 0 || kind / 2 == ownerClass) {
				belief.addTo(kind, placed, this.axes.firstToday(isFlare(kind)));
			}
		}
		return placed;
	}

	/**
	 * The chance that the dog is in a flare.
	 * @param belief the belief
	 * @return the chance
	 */
	static double flareChance(PointMasses belief) {
		double chance = 0;
		for (int kind = 1; kind < belief.kinds(); kind += 2) {
			for (int i = 0; i < belief.grid().size(); i++) {
				chance += belief.mass(kind, i);
			}
		}
		return chance;
	}

}

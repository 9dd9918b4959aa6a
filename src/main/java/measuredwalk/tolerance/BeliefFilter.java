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

	/** Where the tails of steps are cut, in standard deviations. */
	private static final double REACH = 5.5;

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
		this.luck = Kernel.normal(0, settings.walking().dayDeviation(), step, REACH);
		this.axes = Axes.of(settings, this.luck.reach());
		this.drift = drift(settings.drift(), settings.drift().dailyDeviation(), step);
		this.driftAfterMedicine = drift(settings.drift(), settings.drift().afterMedicineDeviation(), step);
		ThresholdCurve onset = new ThresholdCurve(this.axes.today(), settings.walking().onsetDeviation());
		this.walkLikelihood = new WalkLikelihood(settings.owners(), onset);
		this.overload = new ThresholdCurve(this.axes.today(), settings.mornings().overloadDeviation());
		this.flareMoves = new FlareMoves(settings.flares(), onset);
	}

	private static Drift drift(DriftSettings settings, double daily, double step) {
		return new Drift(List.of(new Drift.Step(1 - settings.dropChance(), Kernel.normal(0, daily, step, REACH)),
				new Drift.Step(settings.dropChance(),
						Kernel.normal(settings.dropMean(), settings.dropDeviation(), step, REACH))));
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
		PointMasses weighed = belief.moved(moves(belief, walks, morning));
		boolean silent = morning == null && walks.evidence().isEmpty();
		double widest = this.settings.drift().widest();
		if (silent && weighed.law().variance() > widest * widest) {
			return weighed.normalised();
		}
		return weighed.drifted(afterMedicine ? this.driftAfterMedicine : this.drift).normalised();
	}

	private List<KindMove> moves(PointMasses belief, DayWalks walks, @Nullable MorningLikelihood morning) {
		List<ClassLikelihood> told = this.walkLikelihood.of(walks.evidence());
		double[][] seen = (morning != null) ? morning.of(this.overload, walks.load()) : null;
		List<KindMove> moves = new ArrayList<>();
		for (int from = 0; from < 2; from++) {
			double[] flare = this.flareMoves.flare(from == 1, walks.overload());
			for (int to = 0; to < 2; to++) {
				double[] common = new double[flare.length];
				for (int i = 0; i < common.length; i++) {
					double turns = (to == 1) ? flare[i] : 1 - flare[i];
					common[i] = (seen != null) ? turns * seen[to][i] : turns;
				}
				addMoves(moves, from, to, common, told, belief);
			}
		}
		return moves;
	}

	private void addMoves(List<KindMove> moves, int from, int to, double[] common, List<ClassLikelihood> told,
			PointMasses belief) {
		double[] today = new double[common.length];
		double[] fresh = new double[0];
		for (int ownerClass = 0; ownerClass < told.size(); ownerClass++) {
			ClassLikelihood said = told.get(ownerClass);
			if (ownerClass == 0 || !said.shares(told.get(ownerClass - 1))) {
				for (int i = 0; i < today.length; i++) {
					today[i] = common[i] * said.today()[i];
				}
				fresh = new double[this.axes.fresh().size()];
				this.luck.expect(today, this.axes.firstToday(from == 1), fresh, belief.low(), belief.high(),
						new double[fresh.length]);
			}
			moves.add(new KindMove(2 * ownerClass + from, 2 * ownerClass + to, fresh, said.factor()));
		}
	}

	/**
	 * Today's tolerance, with flare and luck, after what was told of today's walks.
	 * @param belief the belief of this morning
	 * @param walks what was told of today's walks so far
	 * @return the law of the log of today's tolerance in minutes
	 */
	GridLaw today(PointMasses belief, DayWalks walks) {
		return new GridLaw(this.axes.today(), todayMasses(belief, walks));
	}

	/** Not normalised: the sum is the chance of what was told of the walks. */
	private double[] todayMasses(PointMasses belief, DayWalks walks) {
		List<ClassLikelihood> told = this.walkLikelihood.of(walks.evidence());
		double[] today = new double[this.axes.today().size()];
		double[] placed = new double[today.length];
		for (int ownerClass = 0; ownerClass < told.size(); ownerClass++) {
			belief.addTo(2 * ownerClass, placed, this.axes.firstToday(false));
			belief.addTo(2 * ownerClass + 1, placed, this.axes.firstToday(true));
			boolean last = ownerClass + 1 == told.size();
			if (last || !walks.evidence().isEmpty()) {
				addToday(placed, told.get(ownerClass), today);
				placed = new double[today.length];
			}
		}
		return today;
	}

	private void addToday(double[] placed, ClassLikelihood said, double[] today) {
		double[] moved = new double[placed.length];
		this.luck.move(placed, 0, placed.length, moved, said.factor(), new double[placed.length]);
		for (int i = 0; i < today.length; i++) {
			today[i] += moved[i] * said.today()[i];
		}
	}

	/**
	 * The chance that a sign is told of a walk, for what is known before today's walks.
	 * @param belief the belief of this morning
	 * @param load the walk's load
	 * @return the chance
	 */
	double chanceOfSign(PointMasses belief, double load) {
		DayWalks walks = new DayWalks(List.of(WalkEvidence.clean(load, false)), DayWalks.Ended.NEVER,
				DayWalks.Ended.NEVER);
		double none = 0;
		for (double mass : todayMasses(belief, walks)) {
			none += mass;
		}
		return Math.max(0, Math.min(1, 1 - none));
	}

	/**
	 * The chance that the dog is in a flare.
	 * @param belief the belief
	 * @return the chance
	 */
	static double flareChance(PointMasses belief) {
		double chance = 0;
		for (int kind = 1; kind < belief.kinds(); kind += 2) {
			chance += belief.total(kind);
		}
		return chance;
	}

}

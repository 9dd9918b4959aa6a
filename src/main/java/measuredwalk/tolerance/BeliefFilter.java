package measuredwalk.tolerance;

import java.util.ArrayList;
import java.util.Arrays;
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

	/** Drops are rare, so that less of their tails is worth the work. */
	private static final double DROP_REACH = 4;

	private final ToleranceSettings settings;

	private final Axes axes;

	private final Kernel luck;

	private final Drift drift;

	private final Drift driftAfterMedicine;

	private final WalkLikelihood walkLikelihood;

	private final ThresholdCurve overload;

	private final FlareMoves flareMoves;

	/** A factor of 1 everywhere. */
	private final double[] certain;

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
		this.certain = new double[this.axes.today().size()];
		Arrays.fill(this.certain, 1);
	}

	private static Drift drift(DriftSettings settings, double daily, double step) {
		return new Drift(List.of(new Drift.Step(1 - settings.dropChance(), Kernel.normal(0, daily, step, REACH)),
				new Drift.Step(settings.dropChance(),
						Kernel.normal(settings.dropMean(), settings.dropDeviation(), step, DROP_REACH))));
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
		return drifted(weighed, walks, morning, afterMedicine);
	}

	/**
	 * The law of the log of the next morning's tolerance: as by {@link #overnight} and
	 * {@link #today}, for less work, since owner classes drift alike.
	 * @param belief the belief of this morning
	 * @param walks what was told of today's walks
	 * @param morning the next morning's likelihood, or null when it was not told
	 * @param afterMedicine whether a medicine was changed lately
	 * @return the law
	 */
	GridLaw lawOvernight(PointMasses belief, DayWalks walks, @Nullable MorningLikelihood morning,
			boolean afterMedicine) {
		PointMasses weighed = belief.moved(moves(belief, walks, morning), 2);
		return today(drifted(weighed, walks, morning, afterMedicine), DayWalks.NONE);
	}

	private PointMasses drifted(PointMasses weighed, DayWalks walks, @Nullable MorningLikelihood morning,
			boolean afterMedicine) {
		boolean silent = morning == null && walks.evidence().isEmpty();
		double widest = this.settings.drift().widest();
		if (silent && weighed.law().variance() > widest * widest) {
			return weighed.normalised();
		}
		return weighed.drifted(afterMedicine ? this.driftAfterMedicine : this.drift);
	}

	private List<KindMove> moves(PointMasses belief, DayWalks walks, @Nullable MorningLikelihood morning) {
		List<ClassLikelihood> told = this.walkLikelihood.of(walks.evidence());
		double[][] seen = (morning != null) ? morning.of(this.overload, walks.load()) : null;
		FlareSettings flares = this.settings.flares();
		List<KindMove> moves = new ArrayList<>();
		for (int to = 0; to < 2; to++) {
			double stays = (to == 1) ? flares.stayChance() : 1 - flares.stayChance();
			double starts = (to == 1) ? flares.startChance() : 1 - flares.startChance();
			double[] common = (seen != null) ? seen[to] : this.certain;
			boolean overload = walks.overload() > 0;
			addMoves(moves, to, overload ? new double[] { 0, stays } : new double[] { starts, stays }, common, told,
					belief);
			if (overload) {
				double[] begins = this.flareMoves.beginning(to == 1, walks.overload());
				multiply(begins, begins, common);
				addMoves(moves, to, new double[] { 1, 0 }, begins, told, belief);
			}
		}
		return moves;
	}

	/**
	 * One average over luck serves the moves from no flare and from a flare, which look
	 * at the same values a flare apart. A factor of 0 leaves a move out.
	 */
	private void addMoves(List<KindMove> moves, int to, double[] factors, double[] common, List<ClassLikelihood> told,
			PointMasses belief) {
		double[] fresh = new double[0];
		double[] today = new double[common.length];
		double[] scratch = new double[common.length];
		for (int ownerClass = 0; ownerClass < told.size(); ownerClass++) {
			ClassLikelihood said = told.get(ownerClass);
			if (ownerClass == 0 || !said.shares(told.get(ownerClass - 1))) {
				multiply(today, common, said.today());
				fresh = overLuck(today, belief.low(), belief.high(), scratch);
			}
			for (int from = 0; from < 2; from++) {
				if (factors[from] > 0) {
					moves.add(new KindMove(2 * ownerClass + from, 2 * ownerClass + to, fresh,
							(from == 1) ? 0 : this.axes.flarePoints(), said.factor() * factors[from]));
				}
			}
		}
	}

	private double[] overLuck(double[] today, int low, int high, double[] scratch) {
		double[] fresh = new double[this.axes.fresh().size() + this.axes.flarePoints()];
		this.luck.expect(today, this.axes.firstToday(true), fresh, low, high + this.axes.flarePoints(), scratch);
		return fresh;
	}

	private static void multiply(double[] into, double[] one, double[] other) {
		for (int i = 0; i < into.length; i++) {
			into[i] = one[i] * other[i];
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
		double[] today = new double[this.axes.today().size()];
		double[] placed = new double[today.length];
		double[] scratch = new double[today.length];
		if (walks.evidence().isEmpty()) {
			for (int kind = 0; kind < belief.kinds(); kind++) {
				belief.addTo(kind, placed, this.axes.firstToday(isFlare(kind)));
			}
			this.luck.move(placed, 0, placed.length, today, 1, scratch);
			return today;
		}
		List<ClassLikelihood> told = this.walkLikelihood.of(walks.evidence());
		double[] moved = new double[today.length];
		for (int ownerClass = 0; ownerClass < told.size(); ownerClass++) {
			Arrays.fill(placed, 0);
			Arrays.fill(moved, 0);
			belief.addTo(2 * ownerClass, placed, this.axes.firstToday(false));
			belief.addTo(2 * ownerClass + 1, placed, this.axes.firstToday(true));
			this.luck.move(placed, 0, placed.length, moved, told.get(ownerClass).factor(), scratch);
			addProduct(today, moved, told.get(ownerClass).today());
		}
		return today;
	}

	private static void addProduct(double[] sum, double[] one, double[] other) {
		for (int i = 0; i < sum.length; i++) {
			sum[i] += one[i] * other[i];
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

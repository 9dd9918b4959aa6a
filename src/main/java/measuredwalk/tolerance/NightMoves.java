package measuredwalk.tolerance;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

import measuredwalk.tolerance.filter.Bench;
import measuredwalk.tolerance.filter.KindMove;
import measuredwalk.tolerance.filter.PointMasses;
import measuredwalk.tolerance.filter.ThresholdCurve;
import org.jspecify.annotations.Nullable;

/**
 * How a night weighs and moves the kinds of dog: by what was told of the day's walks, by
 * the next morning, and by flares that begin or end.
 */
final class NightMoves {

	private final LuckOfDay luck;

	private final WalkLikelihood walkLikelihood;

	private final ThresholdCurve overload;

	private final FlareSettings flares;

	private final FlareMoves flareMoves;

	/** A factor of 1 everywhere. */
	private final double[] certain;

	NightMoves(ToleranceSettings settings, LuckOfDay luck, ThresholdCurve onset, WalkLikelihood walkLikelihood) {
		this.luck = luck;
		this.walkLikelihood = walkLikelihood;
		this.overload = new ThresholdCurve(luck.axes().today(), settings.mornings().overloadDeviation());
		this.flares = settings.flares();
		this.flareMoves = new FlareMoves(settings.flares(), onset);
		this.certain = new double[luck.axes().today().size()];
		Arrays.fill(this.certain, 1);
	}

	List<KindMove> of(PointMasses belief, DayWalks walks, @Nullable MorningLikelihood morning) {
		List<ClassLikelihood> told = this.walkLikelihood.of(walks.evidence());
		double[][] seen = (morning != null) ? morning.of(this.overload, walks.load()) : null;
		Moves moves = new Moves(belief, told);
		for (int to = 0; to < 2; to++) {
			double stays = (to == 1) ? this.flares.stayChance() : 1 - this.flares.stayChance();
			double starts = (to == 1) ? this.flares.startChance() : 1 - this.flares.startChance();
			double[] common = (seen != null) ? seen[to] : this.certain;
			if (walks.overload() > 0) {
				moves.add(to, new double[] { 0, stays }, common);
				double[] begins = this.flareMoves.beginning(to == 1, walks.overload());
				multiply(begins, begins, common);
				moves.add(to, new double[] { 1, 0 }, begins);
			}
			else {
				moves.add(to, new double[] { starts, stays }, common);
			}
		}
		return moves.all;
	}

	private static void multiply(double[] into, double[] one, double[] other) {
		for (int i = 0; i < into.length; i++) {
			into[i] = one[i] * other[i];
		}
	}

	/** Collects the moves of one night. */
	private final class Moves {

		private final List<KindMove> all = new ArrayList<>();

		private final PointMasses belief;

		private final List<ClassLikelihood> told;

		private final double[] today = new double[NightMoves.this.certain.length];

		private final Bench bench = NightMoves.this.luck.bench();

		Moves(PointMasses belief, List<ClassLikelihood> told) {
			this.belief = belief;
			this.told = told;
		}

		/**
		 * Adds the moves into a flare or out of it.
		 * @param to 1 into a flare
		 * @param factors chances to come from no flare and from a flare; 0 leaves it out
		 * @param common what weighs all owner classes alike, by today's tolerance
		 */
		void add(int to, double[] factors, double[] common) {
			double[] inFlare = new double[0];
			double[] usual = inFlare;
			for (int ownerClass = 0; ownerClass < this.told.size(); ownerClass++) {
				ClassLikelihood said = this.told.get(ownerClass);
				if (ownerClass == 0 || !said.shares(this.told.get(ownerClass - 1))) {
					multiply(this.today, common, said.today());
					inFlare = NightMoves.this.luck.average(this.today, this.belief.low(), this.belief.high(),
							this.bench);
					usual = Arrays.copyOfRange(inFlare, NightMoves.this.luck.axes().flarePoints(), inFlare.length);
				}
				for (int from = 0; from < 2; from++) {
					if (factors[from] > 0) {
						this.all.add(new KindMove(2 * ownerClass + from, 2 * ownerClass + to,
								(from == 1) ? inFlare : usual, said.factor() * factors[from]));
					}
				}
			}
		}

	}

}

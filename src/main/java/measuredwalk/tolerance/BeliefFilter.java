package measuredwalk.tolerance;

import java.util.List;

import measuredwalk.tolerance.filter.Drift;
import measuredwalk.tolerance.filter.GridLaw;
import measuredwalk.tolerance.filter.Kernel;
import measuredwalk.tolerance.filter.PointMasses;
import measuredwalk.tolerance.filter.ThresholdCurve;
import org.jspecify.annotations.Nullable;

/**
 * Moves the belief about a dog from one morning to the next. A belief is the fresh
 * tolerance on a grid for each kind of dog: owner class, in a flare or not.
 */
final class BeliefFilter {

	/** Where the tails of daily steps are cut, in standard deviations. */
	private static final double REACH = 4.8;

	private static final double SPACING = 0.5;

	/** Drops are rare, so that less of their tails is worth the work. */
	private static final double DROP_REACH = 4;

	/** Nor are fine samples: the ripple is a drop's chance times 4e-4. */
	private static final double DROP_SPACING = 0.75;

	private final DriftSettings settings;

	private final LuckOfDay luck;

	private final Drift drift;

	private final Drift driftAfterMedicine;

	private final PriorBelief prior;

	private final NightMoves nightMoves;

	private final TodayLaw todayLaw;

	private final SignForecast forecast;

	BeliefFilter(ToleranceSettings settings) {
		this.settings = settings.drift();
		this.luck = new LuckOfDay(settings);
		double step = Axes.step(settings);
		this.drift = drift(this.settings, this.settings.dailyDeviation(), step);
		this.driftAfterMedicine = drift(this.settings, this.settings.afterMedicineDeviation(), step);
		ThresholdCurve onset = new ThresholdCurve(axes().today(), settings.walking().onsetDeviation());
		WalkLikelihood walkLikelihood = new WalkLikelihood(settings.owners(), onset);
		this.prior = new PriorBelief(settings, axes().fresh());
		this.nightMoves = new NightMoves(settings, this.luck, onset, walkLikelihood);
		this.todayLaw = new TodayLaw(this.luck, walkLikelihood);
		this.forecast = new SignForecast(settings, axes());
	}

	private static Drift drift(DriftSettings settings, double daily, double step) {
		return new Drift(List.of(
				new Drift.Step(1 - settings.dropChance(), Kernel.normal(0, daily, step, REACH, SPACING)),
				new Drift.Step(settings.dropChance(),
						Kernel.normal(settings.dropMean(), settings.dropDeviation(), step, DROP_REACH, DROP_SPACING))));
	}

	Axes axes() {
		return this.luck.axes();
	}

	/**
	 * The belief before anything is known.
	 * @param planMinutes minutes of the clinic's plan
	 * @return the belief
	 */
	PointMasses prior(double planMinutes) {
		return this.prior.of(planMinutes);
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
		PointMasses weighed = belief.moved(this.nightMoves.of(belief, walks, morning));
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
		PointMasses weighed = belief.moved(this.nightMoves.of(belief, walks, morning), 2);
		return this.todayLaw.of(drifted(weighed, walks, morning, afterMedicine));
	}

	private PointMasses drifted(PointMasses weighed, DayWalks walks, @Nullable MorningLikelihood morning,
			boolean afterMedicine) {
		boolean silent = morning == null && walks.evidence().isEmpty();
		double widest = this.settings.widest();
		if (silent && weighed.law().variance() > widest * widest) {
			return weighed.normalised();
		}
		return weighed.drifted(afterMedicine ? this.driftAfterMedicine : this.drift);
	}

	/**
	 * Today's tolerance, with flare and luck, after what was told of today's walks.
	 * @param belief the belief of this morning
	 * @param walks what was told of today's walks so far
	 * @return the law of the log of today's tolerance in minutes
	 */
	GridLaw today(PointMasses belief, DayWalks walks) {
		return this.todayLaw.of(belief, walks);
	}

	/**
	 * The chances that a sign is told of walks, for what is known before today's walks.
	 * @param belief the belief of this morning
	 * @return the forecast
	 */
	SignForecast.OfMorning forecast(PointMasses belief) {
		return this.forecast.of(belief);
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

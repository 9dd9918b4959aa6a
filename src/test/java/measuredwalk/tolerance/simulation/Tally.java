package measuredwalk.tolerance.simulation;

import java.util.ArrayList;
import java.util.List;

/** Counts the days of one policy with the dogs of one kind. */
final class Tally {

	/** Below this share of the best safe dose a day counts as under. */
	private static final double FAR_BELOW = 0.70;

	/** One minute too many costs as much as three too few. */
	private static final double COST_ABOVE = 3;

	private static final double NO_WALK = 0.5;

	private final List<Double> comeDowns = new ArrayList<>();

	private long days;

	private long above;

	private long under;

	private double regret;

	private double regretOfBest;

	private double shareOfBest;

	private double predicted;

	private long passed;

	private long predictions;

	void add(Household home, List<TrialDay> trial) {
		trial.forEach(this::add);
		home.dropDay().ifPresent((drop) -> {
			if (drop <= trial.size()) {
				this.comeDowns.add(daysToComeDown(trial.subList(drop - 1, trial.size())));
			}
		});
	}

	void add(Tally other) {
		this.comeDowns.addAll(other.comeDowns);
		this.days += other.days;
		this.above += other.above;
		this.under += other.under;
		this.regret += other.regret;
		this.regretOfBest += other.regretOfBest;
		this.shareOfBest += other.shareOfBest;
		this.predicted += other.predicted;
		this.passed += other.passed;
		this.predictions += other.predictions;
	}

	void add(TrialDay day) {
		double minutes = day.dose().minutes();
		this.days++;
		this.above += (minutes > day.limit()) ? 1 : 0;
		this.under += (minutes < FAR_BELOW * day.bestSafe()) ? 1 : 0;
		this.regret += regret(minutes, day.limit());
		this.regretOfBest += regret(minutes, day.bestSafe());
		this.shareOfBest += minutes / day.bestSafe();
		if (!Double.isNaN(day.dose().chance())) {
			this.predictions++;
			this.predicted += day.dose().chance();
			this.passed += (minutes > day.tolerance()) ? 1 : 0;
		}
	}

	/**
	 * What a day costs.
	 * @param minutes minutes suggested; below half a minute counts as half a minute,
	 * which is no walk
	 * @param best minutes that would have been right
	 * @return 3 for each unit of log distance above, 1 below
	 */
	static double regret(double minutes, double best) {
		double distance = Math.log(Math.max(NO_WALK, minutes) / Math.max(NO_WALK, best));
		return (distance > 0) ? COST_ABOVE * distance : -distance;
	}

	/**
	 * Days from the drop to the first suggestion within the middle of the new tolerance;
	 * all days when there is none.
	 */
	static double daysToComeDown(List<TrialDay> fromDrop) {
		for (int day = 0; day < fromDrop.size(); day++) {
			if (fromDrop.get(day).dose().minutes() <= fromDrop.get(day).middleLimit()) {
				return day;
			}
		}
		return fromDrop.size();
	}

	long days() {
		return this.days;
	}

	double above() {
		return (double) this.above / this.days;
	}

	double under() {
		return (double) this.under / this.days;
	}

	double regret() {
		return this.regret / this.days;
	}

	double regretOfBest() {
		return this.regretOfBest / this.days;
	}

	double shareOfBest() {
		return this.shareOfBest / this.days;
	}

	/**
	 * Mean predicted minus observed share of suggestions that pass the tolerance in one
	 * walk; NaN without predictions.
	 */
	double predictedMinusObserved() {
		return (this.predicted - this.passed) / this.predictions;
	}

	double[] comeDowns() {
		return this.comeDowns.stream().mapToDouble(Double::doubleValue).toArray();
	}

}

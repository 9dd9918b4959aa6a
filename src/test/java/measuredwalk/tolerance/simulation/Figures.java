package measuredwalk.tolerance.simulation;

import java.util.Arrays;
import java.util.Collection;
import java.util.Map;

/**
 * The figures of one policy in one world.
 *
 * @param above share of days above true tolerance
 * @param under share of days under 70 % of the best safe dose
 * @param regret mean of 3 x log distance above today's true tolerance, 1 x below
 * @param regretOfBest the same against the best safe dose
 * @param worstAbove share of days above with the kind of dog that has most
 * @param worstUnder share of days under with the kind of dog that has most
 * @param comeDownMean mean days to come down after a sudden drop, those included that
 * were low enough already
 * @param comeDownMeanIfAbove mean over those that were above on the day of the drop
 * @param comeDownMedian median of the same
 * @param comeDownNinety ninetieth percentile of the same
 * @param calibration predicted minus observed chance of trouble, without sign
 * @param calibrationWorst the same with the worst kind of dog
 * @param shareOfBest mean of suggestion over best safe dose
 */
record Figures(double above, double under, double regret, double regretOfBest, double worstAbove, double worstUnder,
		double comeDownMean, double comeDownMeanIfAbove, double comeDownMedian, double comeDownNinety,
		double calibration, double calibrationWorst, double shareOfBest) {

	static final String[] NAMES = { "above", "under", "regret", "regret of best", "worst kind above",
			"worst kind under", "down mean", "down mean if above", "down median", "down 90 %", "calibration",
			"calibration worst kind", "share of best" };

	static Figures of(Map<Kind, Tally> tallies) {
		Tally all = new Tally();
		tallies.values().forEach(all::add);
		Collection<Tally> kinds = tallies.values();
		double[] downs = all.comeDowns();
		double[] downsIfAbove = Arrays.stream(downs).filter((days) -> days > 0).toArray();
		return new Figures(all.above(), all.under(), all.regret(), all.regretOfBest(),
				kinds.stream().mapToDouble(Tally::above).max().orElseThrow(),
				kinds.stream().mapToDouble(Tally::under).max().orElseThrow(),
				Arrays.stream(downs).average().orElse(Double.NaN),
				Arrays.stream(downsIfAbove).average().orElse(Double.NaN), Quantiles.of(downsIfAbove, 0.5),
				Quantiles.of(downsIfAbove, 0.9), Math.abs(all.predictedMinusObserved()),
				kinds.stream().mapToDouble((tally) -> Math.abs(tally.predictedMinusObserved())).max().orElseThrow(),
				all.shareOfBest());
	}

	double[] values() {
		return new double[] { this.above, this.under, this.regret, this.regretOfBest, this.worstAbove, this.worstUnder,
				this.comeDownMean, this.comeDownMeanIfAbove, this.comeDownMedian, this.comeDownNinety, this.calibration,
				this.calibrationWorst, this.shareOfBest };
	}

}

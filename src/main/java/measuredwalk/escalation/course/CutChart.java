package measuredwalk.escalation.course;

import java.util.List;

import measuredwalk.surveillance.Cusum;

/**
 * A cumulative-sum chart on the model's own cuts (Page 1954, Biometrika 41:100). Where
 * the model doses, a dog that gets worse is walked less and shows no more signs than
 * before: what it lost is seen in the belief about its tolerance, which falls and stays
 * low.
 * <p>
 * Each day's score is how far the belief is below its own median of four weeks that end a
 * fortnight ago, in logs. The reference is half of what a loss of a fifth adds, as is
 * best for a shift of that size; the limit is set by simulation, since beliefs of
 * successive days hang together and exact run lengths for independent days do not hold
 * (docs/escalation.md has both).
 */
final class CutChart {

	/** Half of the log of 1 / 0.8. */
	static final double REFERENCE = 0.11;

	/** So far back the own median ends, so that a slow fall is not taken into it. */
	private static final int GAP_DAYS = 14;

	private static final int BASELINE_DAYS = 28;

	/** With fewer days there is no own median yet. Ours, no source. */
	private static final int FEWEST_BASELINE_DAYS = 14;

	/** One day counts no more than a loss of a quarter does, whatever flares do. */
	private static final double LARGEST_SCORE = 0.3;

	private final Cusum chart;

	CutChart(double limit) {
		this.chart = new Cusum(REFERENCE, limit);
	}

	/**
	 * The sum after these days.
	 * @param medians medians of the belief in minutes, a day each, the oldest first,
	 * since the dog was taken on or a medicine last changed
	 * @return the sum as a part of the limit: 1 and above is an alarm
	 */
	double level(List<Double> medians) {
		double sum = 0;
		for (int day = GAP_DAYS + FEWEST_BASELINE_DAYS - 1; day < medians.size(); day++) {
			double score = Math.log(usual(medians, day) / medians.get(day));
			sum = this.chart.next(sum, Math.min(LARGEST_SCORE, score));
		}
		return sum / this.chart.limit();
	}

	/**
	 * The own median that a day is held against.
	 * @param medians as for {@link #level}
	 * @param day the day's place, not before there is a baseline
	 * @return the median in minutes
	 */
	static double usual(List<Double> medians, int day) {
		int end = day - GAP_DAYS + 1;
		List<Double> baseline = medians.subList(Math.max(0, end - BASELINE_DAYS), end).stream().sorted().toList();
		int middle = baseline.size() / 2;
		return (baseline.size() % 2 == 1) ? baseline.get(middle)
				: (baseline.get(middle - 1) + baseline.get(middle)) / 2;
	}

}

package measuredwalk.escalation.course;

import java.util.List;

import measuredwalk.surveillance.Cusum;
import measuredwalk.surveillance.RunLengths;

/**
 * A cumulative-sum chart of the daily sign burden, designed for one dog by the exact run
 * length of its own graded days (Page 1954, Biometrika 41:100; Brook and Evans 1972,
 * Biometrika 59:539): the false alarms that a dog may have are fixed, whatever is usual
 * for it.
 */
final class BurdenChart {

	/** The chart looks for a rise of one own standard deviation. */
	private static final double HALF_THE_RISE = 0.5;

	/** Reference and sum stand on a lattice of eighths of a grade. */
	private static final double UNIT = 0.125;

	private static final double LARGEST_LIMIT = 20;

	private final Cusum chart;

	private BurdenChart(Cusum chart) {
		this.chart = chart;
	}

	/**
	 * The chart for a dog whose days are usually so.
	 * @param usual its usual days
	 * @param daysToAFalseAlarm days told of until a false alarm, on average, at least
	 */
	static BurdenChart of(UsualDays usual, double daysToAFalseAlarm) {
		double mean = usual.mean();
		double reference = Math.rint((mean + HALF_THE_RISE * usual.deviation()) / UNIT) * UNIT;
		double limit = UNIT;
		while (limit < LARGEST_LIMIT && falseAlarmEvery(new Cusum(reference, limit), usual) < daysToAFalseAlarm) {
			limit += UNIT;
		}
		return new BurdenChart(new Cusum(reference, limit));
	}

	static double falseAlarmEvery(Cusum chart, UsualDays usual) {
		return RunLengths.lattice(chart, usual::shareAtMost, UNIT).from(0);
	}

	Cusum cusum() {
		return this.chart;
	}

	/** The sum after these days, as a part of the limit: 1 and above is an alarm. */
	double level(List<Integer> grades) {
		double sum = 0;
		for (int grade : grades) {
			sum = this.chart.next(sum, grade);
		}
		return sum / this.chart.limit();
	}

}

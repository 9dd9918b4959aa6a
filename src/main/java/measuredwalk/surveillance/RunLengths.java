package measuredwalk.surveillance;

import java.util.function.DoubleUnaryOperator;

/**
 * Average run lengths of a {@link Cusum} for independent scores of one law, by a Markov
 * chain on the sum (Brook and Evans 1972, Biometrika 59:539). For scores on a lattice the
 * chain is exact; for continuous scores its error falls with the square of the number of
 * states.
 */
public final class RunLengths {

	private final double width;

	private final double[] lengths;

	private RunLengths(double width, double[] lengths) {
		this.width = width;
		this.lengths = lengths;
	}

	/**
	 * For continuous scores.
	 * @param chart the chart
	 * @param below the chance that a score is at most a value
	 * @param states number of states, at least 2; 200 gives four digits
	 * @return the run lengths
	 */
	public static RunLengths continuous(Cusum chart, DoubleUnaryOperator below, int states) {
		return of(chart, below, 2 * chart.limit() / (2 * states - 1), states);
	}

	/**
	 * For scores that, with the reference, are multiples of a unit, such as counts.
	 * @param chart the chart
	 * @param below the chance that a score is at most a value
	 * @param unit the unit, above 0
	 * @return the run lengths, exact
	 */
	public static RunLengths lattice(Cusum chart, DoubleUnaryOperator below, double unit) {
		return of(chart, below, unit, (int) Math.ceil(chart.limit() / unit - 1e-9));
	}

	private static RunLengths of(Cusum chart, DoubleUnaryOperator below, double width, int states) {
		double[] belowStep = new double[2 * states];
		for (int i = 0; i < belowStep.length; i++) {
			belowStep[i] = below.applyAsDouble(chart.reference() + (i - states + 0.5) * width);
		}
		double[][] equations = new double[states][states + 1];
		for (int from = 0; from < states; from++) {
			double under = 0;
			for (int to = 0; to < states; to++) {
				double up = belowStep[to - from + states];
				equations[from][to] = ((to == from) ? 1 : 0) - (up - under);
				under = up;
			}
			equations[from][states] = 1;
		}
		return new RunLengths(width, solved(equations));
	}

	/**
	 * Gaussian elimination; the matrix is diagonally dominant, so no pivoting is needed.
	 */
	private static double[] solved(double[][] equations) {
		int size = equations.length;
		for (int pivot = 0; pivot < size; pivot++) {
			for (int row = pivot + 1; row < size; row++) {
				double factor = equations[row][pivot] / equations[pivot][pivot];
				for (int column = pivot; column <= size; column++) {
					equations[row][column] -= factor * equations[pivot][column];
				}
			}
		}
		double[] solution = new double[size];
		for (int row = size - 1; row >= 0; row--) {
			double rest = equations[row][size];
			for (int column = row + 1; column < size; column++) {
				rest -= equations[row][column] * solution[column];
			}
			solution[row] = rest / equations[row][row];
		}
		return solution;
	}

	/**
	 * The average number of scores until the alarm.
	 * @param start the sum at the start, 0 or a head start under the limit
	 * @return the average run length, the alarming score included
	 */
	public double from(double start) {
		double position = start / this.width;
		int state = (int) Math.min(this.lengths.length - 1, Math.floor(position + 1e-9));
		if (state + 1 >= this.lengths.length) {
			return this.lengths[state];
		}
		double part = Math.max(0, position - state);
		return (1 - part) * this.lengths[state] + part * this.lengths[state + 1];
	}

	/**
	 * The average run length of two charts side by side, one for rises and one for falls,
	 * both with the same head start (Lucas and Crosier 1982).
	 * @param rises the chart for rises
	 * @param falls the chart for falls
	 * @param start the head start of each
	 * @return the average number of scores until the first alarm
	 */
	public static double twoSided(RunLengths rises, RunLengths falls, double start) {
		double up = rises.from(0);
		double down = falls.from(0);
		return (rises.from(start) * down + falls.from(start) * up - up * down) / (up + down);
	}

}

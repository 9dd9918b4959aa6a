package measuredwalk.tolerance.simulation;

import java.util.Arrays;
import java.util.function.DoubleUnaryOperator;

/** Quantiles of a law given by its distribution function, and of a handful of numbers. */
final class Quantiles {

	private Quantiles() {
	}

	/**
	 * The value at which a rising function reaches p, by halving, to about 1e-9 of the
	 * width.
	 */
	static double invert(DoubleUnaryOperator rising, double p, double low, double high) {
		double from = low;
		double to = high;
		for (int halving = 0; halving < 34; halving++) {
			double middle = (from + to) / 2;
			if (rising.applyAsDouble(middle) < p) {
				from = middle;
			}
			else {
				to = middle;
			}
		}
		return (from + to) / 2;
	}

	/**
	 * The p-quantile of some numbers: the smallest that at least a share p does not pass;
	 * NaN of none.
	 */
	static double of(double[] values, double p) {
		if (values.length == 0) {
			return Double.NaN;
		}
		double[] sorted = values.clone();
		Arrays.sort(sorted);
		return sorted[Math.max(0, (int) Math.ceil(p * sorted.length) - 1)];
	}

}

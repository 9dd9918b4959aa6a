package measuredwalk.tolerance.filter;

import java.util.function.DoubleUnaryOperator;

/**
 * Picks the largest dose whose chance of trouble is small enough: escalation with
 * overdose control (Babb, Rogatko and Zacks 1998, Stat Med 17:1103), where the dose is
 * the alpha-quantile of the tolerated dose.
 */
public final class DoseRule {

	private DoseRule() {
	}

	/**
	 * The largest of some doses.
	 * @param allowed the largest chance allowed, in (0, 1)
	 * @param chance chance of trouble at a dose, rising with the dose
	 * @param doses the doses, rising
	 * @return the largest with a chance of at most {@code allowed}, or the least dose
	 * when there is none
	 */
	public static double largest(double allowed, DoubleUnaryOperator chance, double... doses) {
		double largest = doses[0];
		for (double dose : doses) {
			if (chance.applyAsDouble(dose) <= allowed) {
				largest = dose;
			}
		}
		return largest;
	}

	/**
	 * The largest dose in a range, by halving.
	 * @param allowed the largest chance allowed, in (0, 1)
	 * @param chance chance of trouble at a dose, rising with the dose
	 * @param low low end of the range
	 * @param high high end of the range
	 * @return the dose, to a millionth of the range; {@code low} when even that is too
	 * much
	 */
	public static double largestWithin(double allowed, DoubleUnaryOperator chance, double low, double high) {
		double safe = low;
		double unsafe = high;
		if (chance.applyAsDouble(high) <= allowed) {
			return high;
		}
		for (int i = 0; i < 24; i++) {
			double middle = (safe + unsafe) / 2;
			if (chance.applyAsDouble(middle) <= allowed) {
				safe = middle;
			}
			else {
				unsafe = middle;
			}
		}
		return safe;
	}

}

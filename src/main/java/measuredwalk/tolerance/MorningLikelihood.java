package measuredwalk.tolerance;

import measuredwalk.tolerance.filter.ThresholdCurve;

/**
 * The chance of a morning's grade for every tolerance of the day before, with and without
 * a flare today: an ordered logit.
 */
final class MorningLikelihood {

	private static final double SATURATED = 1e-9;

	private final MorningSettings settings;

	/** Odds against a morning that is mild or worse, without overload and flare. */
	private final double againstMild;

	/** Odds against a bad morning. */
	private final double againstBad;

	private final int grade;

	private final double power;

	/**
	 * The likelihood of one morning.
	 * @param settings the constants
	 * @param usual the dog's usual mornings before this one
	 * @param grade the grade that was seen
	 * @param power weakens it further, 1 for not at all
	 */
	MorningLikelihood(MorningSettings settings, UsualMornings usual, MorningGrade grade, double power) {
		this.settings = settings;
		this.againstMild = (1 - usual.mildShare()) / usual.mildShare();
		this.againstBad = (1 - usual.badShare()) / usual.badShare();
		this.grade = Math.min(2, grade.seen());
		this.power = power * settings.power();
	}

	/**
	 * For every tolerance.
	 * @param curve the curve of overload
	 * @param load the greatest load of the day before, 0 when unknown
	 * @return the likelihoods without and with a flare today
	 */
	double[][] of(ThresholdCurve curve, double load) {
		double[] overload = curve.by(load);
		double[][] values = new double[2][overload.length];
		double flare = Math.exp(-this.settings.flareEffect());
		double full = Math.exp(-this.settings.overloadEffect());
		double[] atNone = { chance(1), chance(flare) };
		double[] atFull = { chance(full), chance(full * flare) };
		for (int i = 0; i < overload.length; i++) {
			if (overload[i] < SATURATED || overload[i] > 1 - SATURATED) {
				double[] end = (overload[i] < SATURATED) ? atNone : atFull;
				values[0][i] = end[0];
				values[1][i] = end[1];
			}
			else {
				double odds = Math.exp(-this.settings.overloadEffect() * overload[i]);
				values[0][i] = chance(odds);
				values[1][i] = chance(odds * flare);
			}
		}
		return values;
	}

	/**
	 * The chance of the grade.
	 * @param easing what overload and flare multiply the odds against a worse morning by
	 * @return the chance, weakened
	 */
	private double chance(double easing) {
		double chance = switch (this.grade) {
			case 0 -> 1 - atLeast(this.againstMild, easing);
			case 1 -> atLeast(this.againstMild, easing) - atLeast(this.againstBad, easing);
			default -> atLeast(this.againstBad, easing);
		};
		return (this.power == 0.5) ? Math.sqrt(chance) : Math.pow(chance, this.power);
	}

	private static double atLeast(double odds, double easing) {
		return 1 / (1 + odds * easing);
	}

}

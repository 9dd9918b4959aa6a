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
		this.againstMild = (1 - usual.newsShare()) / usual.newsShare();
		this.againstBad = (1 - usual.badShare()) / usual.badShare();
		this.grade = Math.min(2, grade.news());
		this.power = power * settings.power();
	}

	/**
	 * For every tolerance.
	 * @param curve the curve of overload
	 * @param load the greatest load of the day before, 0 when unknown
	 * @return the likelihoods without and with a flare today
	 */
	double[][] of(ThresholdCurve curve, double load) {
		double[] easing = easing(curve.by(load));
		return new double[][] { chances(easing, 1), chances(easing, Math.exp(-this.settings.flareEffect())) };
	}

	/** What overload multiplies the odds against a worse morning by. */
	private double[] easing(double[] overload) {
		double[] easing = new double[overload.length];
		double full = Math.exp(-this.settings.overloadEffect());
		for (int i = 0; i < overload.length; i++) {
			if (overload[i] < SATURATED || overload[i] > 1 - SATURATED) {
				easing[i] = (overload[i] < SATURATED) ? 1 : full;
			}
			else {
				easing[i] = Math.exp(-this.settings.overloadEffect() * overload[i]);
			}
		}
		return easing;
	}

	/** The chances of the grade, weakened. */
	private double[] chances(double[] easing, double flare) {
		double[] chances = new double[easing.length];
		between(easing, flare * odds(this.grade), flare * odds(this.grade + 1), chances);
		if (this.power == 0.5) {
			root(chances);
		}
		else {
			for (int i = 0; i < chances.length; i++) {
				chances[i] = Math.pow(chances[i], this.power);
			}
		}
		return chances;
	}

	/** Odds against a morning of at least a grade, without overload and flare. */
	private double odds(int atLeast) {
		return switch (atLeast) {
			case 0 -> 0;
			case 1 -> this.againstMild;
			case 2 -> this.againstBad;
			default -> Double.POSITIVE_INFINITY;
		};
	}

	/**
	 * The chance of at least one grade and not the next. The loops are alone in their
	 * methods so that the compiler makes vector instructions of them.
	 */
	private static void between(double[] easing, double oddsOfThis, double oddsOfNext, double[] chances) {
		for (int i = 0; i < chances.length; i++) {
			chances[i] = 1 / (1 + oddsOfThis * easing[i]) - 1 / (1 + oddsOfNext * easing[i]);
		}
	}

	private static void root(double[] chances) {
		for (int i = 0; i < chances.length; i++) {
			chances[i] = Math.sqrt(chances[i]);
		}
	}

}

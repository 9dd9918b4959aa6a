package measuredwalk.tolerance;

import measuredwalk.tolerance.filter.ThresholdCurve;

/**
 * The chance of a morning's grade for every tolerance of the day before, with and without
 * a flare today: an ordered logit.
 */
final class MorningLikelihood {

	private static final double SATURATED = 1e-9;

	private final MorningSettings settings;

	private final double belowMild;

	private final double belowBad;

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
		this.belowMild = logit(usual.mildShare());
		this.belowBad = logit(usual.badShare());
		this.grade = Math.min(2, grade.seen());
		this.power = power * settings.power();
	}

	private static double logit(double share) {
		return Math.log(share / (1 - share));
	}

	/**
	 * For every tolerance.
	 * @param curve the curve of overload
	 * @param load the greatest load of the day before, 0 when unknown
	 * @param flare whether there is a flare today
	 * @return the likelihoods
	 */
	double[] of(ThresholdCurve curve, double load, boolean flare) {
		double[] values = curve.by(load);
		double none = at(0, flare);
		double full = at(1, flare);
		for (int i = 0; i < values.length; i++) {
			if (values[i] < SATURATED) {
				values[i] = none;
			}
			else {
				values[i] = (values[i] > 1 - SATURATED) ? full : at(values[i], flare);
			}
		}
		return values;
	}

	private double at(double overload, boolean flare) {
		double odds = this.settings.overloadEffect() * overload + (flare ? this.settings.flareEffect() : 0);
		double mild = share(this.belowMild + odds);
		double bad = share(this.belowBad + odds);
		double chance = switch (this.grade) {
			case 0 -> 1 - mild;
			case 1 -> mild - bad;
			default -> bad;
		};
		return (this.power == 0.5) ? Math.sqrt(chance) : Math.pow(chance, this.power);
	}

	private static double share(double logOdds) {
		return 1 / (1 + Math.exp(-logOdds));
	}

}

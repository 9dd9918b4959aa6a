package measuredwalk.tolerance;

/**
 * What mornings of this dog are usually like: shares of mornings at or above each grade,
 * old ones fading, shrunk to what dogs with arthritis are assumed to have.
 *
 * @param mornings faded number of mornings, the assumed ones included
 * @param mild faded number with any sign
 * @param news faded number with signs that were not said to be as usual
 * @param bad faded number with clear signs
 */
record UsualMornings(double mornings, double mild, double news, double bad) {

	/** The dog's own usual is mild when at least this share of its mornings is. */
	private static final double USUALLY = 0.5;

	/** A mild morning is nothing new for the dog from this share on (C). */
	private static final double COMMON = 0.2;

	private static final double MOST = 0.8;

	static UsualMornings assumed(MorningSettings settings) {
		double weight = settings.usualWeight();
		return new UsualMornings(weight, weight * settings.usualMild(), weight * settings.usualMild(),
				weight * settings.usualBad());
	}

	UsualMornings with(MorningGrade grade, MorningSettings settings) {
		double fade = Math.pow(2, -1 / settings.memory());
		UsualMornings start = assumed(settings);
		return new UsualMornings(faded(this.mornings, start.mornings(), fade) + 1,
				faded(this.mild, start.mild(), fade) + ((grade.seen() >= 1) ? 1 : 0),
				faded(this.news, start.news(), fade) + ((grade.news() >= 1) ? 1 : 0),
				faded(this.bad, start.bad(), fade) + ((grade.seen() >= 2) ? 1 : 0));
	}

	/** Fades what was seen, never what was assumed. */
	private static double faded(double now, double assumed, double fade) {
		return assumed + (now - assumed) * fade;
	}

	double mildShare() {
		return Math.min(MOST, this.mild / this.mornings);
	}

	/** Share of mornings with a sign that was news. */
	double newsShare() {
		return Math.min(MOST, this.news / this.mornings);
	}

	double badShare() {
		return Math.min(newsShare() * 0.9, this.bad / this.mornings);
	}

	boolean mildIsCommon() {
		return mildShare() >= COMMON;
	}

	int usualGrade() {
		return (mildShare() >= USUALLY) ? 1 : 0;
	}

}

package measuredwalk.tolerance;

import measuredwalk.signs.Overall;
import measuredwalk.tolerance.ToleranceEvent.MorningSeen;

/**
 * How bad a morning was.
 *
 * @param seen 0 nothing, 1 mild, 2 clear, 3 severe
 * @param aboveUsual grades worse than the dog's own usual, at most 0 for a clear morning
 * @param news how much of it is news to the belief: nothing when the owner saw a mild
 * sign and said that the dog was as usual or better
 */
record MorningGrade(int seen, int aboveUsual, int news) {

	private static final double CLEARLY_STIFF_MINUTES = 30;

	/** Stiffness that has not eased by then is a reason to call the clinic. */
	private static final double SEVERELY_STIFF_MINUTES = 60;

	/** A morning of which all that was seen is news. */
	MorningGrade(int seen, int aboveUsual) {
		this(seen, aboveUsual, seen);
	}

	/**
	 * Grades a morning. A dog that has a mild morning now and then has one within its own
	 * usual, unless the owner says that it is worse; a clear sign is still held against
	 * what most of its mornings are.
	 * @param morning what was told
	 * @param mornings the dog's usual mornings before this one
	 * @return the grade
	 */
	static MorningGrade of(MorningSeen morning, UsualMornings mornings) {
		int usual = mornings.usualGrade();
		int signs = Math.max(stiffness(morning),
				morning.signs()
					.stream()
					.filter(SignMeaning::countsForTolerance)
					.mapToInt(SignMeaning::grade)
					.max()
					.orElse(0));
		if (morning.overall() == Overall.WORSE) {
			return new MorningGrade(Math.max(1, signs), Math.max(1, signs - usual));
		}
		boolean mildIsUsual = morning.overall() != null || (signs == 1 && mornings.mildIsCommon());
		boolean saidToBeUsual = morning.overall() != null && signs == 1;
		return new MorningGrade(signs, signs - (mildIsUsual ? Math.max(1, usual) : usual), saidToBeUsual ? 0 : signs);
	}

	private static int stiffness(MorningSeen morning) {
		if (morning.stiffMinutes() == null || morning.stiffMinutes() < CLEARLY_STIFF_MINUTES) {
			return 0;
		}
		return (morning.stiffMinutes() < SEVERELY_STIFF_MINUTES) ? 2 : 3;
	}

	boolean isClear() {
		return this.aboveUsual <= 0;
	}

	boolean isBad() {
		return this.aboveUsual >= 2;
	}

}

package measuredwalk.tolerance;

import org.jspecify.annotations.Nullable;

/**
 * A bad morning and the days after it, until the dog is back where it was. Bad mornings
 * close together are one episode, measured against the suggestion before the first: else
 * each would cut the last cut.
 *
 * @param lastBad days since the last bad morning, 0 for today
 * @param before what was suggested before the first
 * @param tolerated the longest walk without a sign in a week that ended two days before
 * the first, 0 when none is known
 */
record Episode(int lastBad, double before, double tolerated) {

	/**
	 * Bad mornings not further apart than this belong together: most flares are over by
	 * then (Thomas 2021, Osteoarthritis Cartilage: median 5 days, quartiles 3 and 8; H).
	 */
	private static final int TOGETHER = 8;

	/** After this many days the belief alone decides. */
	static final int LONGEST = 14;

	private static final int WEEK = 7;

	static @Nullable Episode of(Situation situation) {
		int lastBad = nextBad(situation, 0, LONGEST);
		if (lastBad < 0) {
			return null;
		}
		int first = lastBad;
		int earlier = nextBad(situation, first + 1, TOGETHER);
		while (earlier >= 0) {
			first = earlier;
			earlier = nextBad(situation, first + 1, TOGETHER);
		}
		return new Episode(lastBad, situation.suggested(first + 1), tolerated(situation, first + 2));
	}

	private static int nextBad(Situation situation, int from, int days) {
		for (int ago = from; ago < from + days && ago <= situation.past().size(); ago++) {
			MorningGrade morning = situation.morning(ago);
			if (morning != null && morning.isBad()) {
				return ago;
			}
		}
		return -1;
	}

	private static double tolerated(Situation situation, int from) {
		double longest = 0;
		for (int ago = from; ago < from + WEEK; ago++) {
			PastDay day = situation.day(ago);
			longest = Math.max(longest, (day != null) ? day.longestClean() : 0);
		}
		return longest;
	}

}

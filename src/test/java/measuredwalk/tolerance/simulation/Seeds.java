package measuredwalk.tolerance.simulation;

import java.util.stream.LongStream;

/**
 * Seeds for two purposes that never meet: whoever chooses constants looks only at the
 * first, and the figures that are reported come only from the second.
 */
enum Seeds {

	TUNING(1_000_000), JUDGING(2_000_000);

	private static final int MOST = 1000;

	private final long first;

	Seeds(long first) {
		this.first = first;
	}

	/**
	 * The first so many seeds.
	 * @param count how many, at most 1000
	 * @return the seeds
	 */
	long[] first(int count) {
		if (count < 1 || count > MOST) {
			throw new IllegalArgumentException("count must be 1 to " + MOST + ": " + count);
		}
		return LongStream.range(this.first, this.first + count).toArray();
	}

}

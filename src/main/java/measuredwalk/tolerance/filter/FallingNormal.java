package measuredwalk.tolerance.filter;

import java.util.Arrays;

/**
 * The standard normal distribution function along values that fall evenly, for many such
 * sequences with the same fall. All values of a sequence lie at the same place between
 * two nodes of a table whose nodes divide the fall, so that one set of weights serves
 * them all: a value costs four products instead of a search. Cubic Hermite interpolation
 * with nodes at most 1/128 apart keeps the absolute error under 2e-11.
 */
final class FallingNormal {

	/** Beyond this many standard deviations, what is under 1e-11 counts as 0. */
	private static final double SURE = 6.8;

	private static final double NODES_PER_UNIT = 128;

	private final double fall;

	/** The value at the first place of the first row. */
	private final double top;

	/** For each node of a fall the chances a fall apart; the last row is a fall on. */
	private final double[][] below;

	/** Slopes for one node to the next. */
	private final double[][] slope;

	/**
	 * Prepares sequences.
	 * @param fall how much less each next value is, above 0
	 */
	FallingNormal(double fall) {
		int nodes = (int) Math.ceil(fall * NODES_PER_UNIT);
		int places = (int) Math.ceil(2 * (SURE + fall) / fall) + 2;
		this.fall = fall;
		this.top = SURE + fall;
		this.below = new double[nodes + 1][places];
		this.slope = new double[nodes + 1][places];
		for (int node = 0; node <= nodes; node++) {
			for (int place = 0; place < places; place++) {
				double z = this.top - (place + (double) node / nodes) * fall;
				this.below[node][place] = NormalCurve.below(z);
				this.slope[node][place] = -NormalCurve.density(z) * fall / nodes;
			}
		}
	}

	/**
	 * Fills the chances below a sequence.
	 * @param first the value at the first place
	 * @param chances filled whole
	 */
	void fill(double first, double[] chances) {
		int surely = (int) Math.max(0, Math.min(chances.length, Math.floor((first - SURE) / this.fall)));
		int never = (int) Math.max(surely, Math.min(chances.length, Math.ceil((first + SURE) / this.fall)));
		Arrays.fill(chances, 0, surely, 1);
		if (never > surely) {
			interpolate(this.top - (first - surely * this.fall), chances, surely, never);
		}
		Arrays.fill(chances, never, chances.length, 0);
	}

	private void interpolate(double belowTop, double[] chances, int from, int end) {
		int nodes = this.below.length - 1;
		int place = (int) (belowTop / this.fall);
		double position = (belowTop / this.fall - place) * nodes;
		int node = Math.min(nodes - 1, (int) position);
		double t = position - node;
		double left = t * t * (3 - 2 * t);
		double leave = t * (1 - t) * (1 - t);
		double arrive = t * t * (t - 1);
		double[] near = this.below[node];
		double[] far = this.below[node + 1];
		double[] nearSlope = this.slope[node];
		double[] farSlope = this.slope[node + 1];
		for (int i = from; i < end; i++, place++) {
			chances[i] = near[place] + left * (far[place] - near[place]) + leave * nearSlope[place]
					+ arrive * farSlope[place];
		}
	}

}

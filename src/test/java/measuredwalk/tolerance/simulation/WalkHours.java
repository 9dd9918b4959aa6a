package measuredwalk.tolerance.simulation;

/**
 * At what hours a household walks: the same every day, so that carry-over is known in the
 * morning.
 */
final class WalkHours {

	private static final double[][] USUAL = { {}, { 9 }, { 8, 17.5 }, { 7.5, 13, 18.5 }, { 7.5, 11, 15, 19 } };

	private static final double FIRST = 7;

	private static final double LAST = 20;

	private WalkHours() {
	}

	static double[] of(int walks) {
		if (walks < USUAL.length) {
			return USUAL[walks].clone();
		}
		double[] hours = new double[walks];
		for (int walk = 0; walk < walks; walk++) {
			hours[walk] = FIRST + (LAST - FIRST) * walk / (walks - 1);
		}
		return hours;
	}

}

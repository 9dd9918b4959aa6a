package measuredwalk.tolerance;

/**
 * What makes a minute of walking count for more than one at the dog's usual pace and
 * ground. Each factor is 1 for usual, and from 0.25 to 4. What they are by default, and
 * where that is from, stands in {@link DosingSetting}.
 *
 * @param pace trot or fast pace
 * @param slope hills
 * @param surface sand, snow, deep mud, uneven ground
 * @param steps stairs and jumps
 * @param play ball or rough play
 * @param heat a warm day
 */
public record Load(double pace, double slope, double surface, double steps, double play, double heat) {

	/** Usual in everything. */
	public static final Load USUAL = new Load(1, 1, 1, 1, 1, 1);

	public Load {
		for (double factor : new double[] { pace, slope, surface, steps, play, heat }) {
			if (!(factor >= 0.25 && factor <= 4)) {
				throw new IllegalArgumentException("a load factor must be from 0.25 to 4, not " + factor);
			}
		}
	}

	/**
	 * All of it together.
	 * @return what a minute counts for
	 */
	public double factor() {
		return this.pace * this.slope * this.surface * this.steps * this.play * this.heat;
	}

	/** Whether a minute counts for more than one. */
	boolean isHarder() {
		return factor() > 1;
	}

}

package measuredwalk.tolerance;

/**
 * What makes a minute of walking count for more than one at the dog's usual pace and
 * ground. Each factor is 1 for usual.
 *
 * @param pace trot or fast pace: 1.3 (that it loads more is grade A: Beraud 2010, VCOT
 * 23:87; the number is common practice)
 * @param slope hills: 1.2 (common practice)
 * @param surface sand, snow, deep mud, uneven ground: 1.2 (common practice)
 * @param steps stairs and jumps: 1.15 (common practice)
 * @param play ball or rough play: 1.4 (common practice)
 * @param heat a warm day, from 20 degrees: 1.15 (common practice; safety in heat is a
 * matter of its own, Hall 2022, Vet Sci 9:231)
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

	/**
	 * The usual factors for what was told of a walk.
	 * @param fast whether it was at a trot or faster than usual
	 * @param hilly whether there were hills
	 * @param rough whether the ground was sand, snow, mud or uneven
	 * @param stairs whether there were stairs or jumps
	 * @param play whether there was ball or rough play
	 * @param warm whether the day was warm
	 * @return the load
	 */
	public static Load of(boolean fast, boolean hilly, boolean rough, boolean stairs, boolean play, boolean warm) {
		return new Load(fast ? 1.3 : 1, hilly ? 1.2 : 1, rough ? 1.2 : 1, stairs ? 1.15 : 1, play ? 1.4 : 1,
				warm ? 1.15 : 1);
	}

}

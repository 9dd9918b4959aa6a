package measuredwalk.tolerance;

/**
 * What a minute counts for under other than usual conditions. 1 is a minute at the dog's
 * usual pace and ground.
 *
 * @param fastPace at a trot or faster than usual
 * @param hills with hills
 * @param roughGround on sand, snow, deep mud or uneven ground
 * @param stairs with stairs or jumps
 * @param play with ball or rough play
 * @param warmDay on a warm day
 */
public record LoadFactors(double fastPace, double hills, double roughGround, double stairs, double play,
		double warmDay) {

	/**
	 * The factors that a clinic has chosen.
	 * @param settings the choice
	 * @return the factors
	 */
	public static LoadFactors of(DosingSettings settings) {
		return new LoadFactors(settings.value(DosingSetting.FAST_PACE), settings.value(DosingSetting.HILLS),
				settings.value(DosingSetting.ROUGH_GROUND), settings.value(DosingSetting.STAIRS),
				settings.value(DosingSetting.PLAY), settings.value(DosingSetting.WARM_DAY));
	}

	/**
	 * The load of a walk.
	 * @param fast whether it was at a trot or faster than usual
	 * @param hilly whether there were hills
	 * @param rough whether the ground was sand, snow, mud or uneven
	 * @param steps whether there were stairs or jumps
	 * @param ball whether there was ball or rough play
	 * @param warm whether the day was warm
	 * @return the load
	 */
	public Load load(boolean fast, boolean hilly, boolean rough, boolean steps, boolean ball, boolean warm) {
		return new Load(fast ? this.fastPace : 1, hilly ? this.hills : 1, rough ? this.roughGround : 1,
				steps ? this.stairs : 1, ball ? this.play : 1, warm ? this.warmDay : 1);
	}

}

package measuredwalk.tolerance;

import java.util.Set;

import measuredwalk.signs.LoadKind;

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
	 * @param kinds what made it harder than usual
	 * @return the load, {@link Load#USUAL} for none
	 */
	public Load load(Set<LoadKind> kinds) {
		return new Load(kinds.contains(LoadKind.FAST_PACE) ? this.fastPace : 1,
				kinds.contains(LoadKind.HILLS) ? this.hills : 1,
				kinds.contains(LoadKind.ROUGH_GROUND) ? this.roughGround : 1,
				kinds.contains(LoadKind.STAIRS) ? this.stairs : 1, kinds.contains(LoadKind.PLAY) ? this.play : 1,
				kinds.contains(LoadKind.WARM_DAY) ? this.warmDay : 1);
	}

}

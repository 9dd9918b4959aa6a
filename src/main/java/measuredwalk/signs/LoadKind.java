package measuredwalk.signs;

/**
 * What makes a minute of a walk count for more than one at the dog's usual pace and
 * ground. What it counts for is a setting of the dosing rule. The codes are stable, to be
 * stored.
 */
public enum LoadKind implements Coded {

	/** A trot, or faster than usual. */
	FAST_PACE,

	/** Up or down hills. */
	HILLS,

	/** Sand, snow, deep mud or uneven ground. */
	ROUGH_GROUND,

	/** Stairs, steps and jumps. */
	STAIRS,

	/** Ball games and rough play. */
	PLAY,

	/** A warm day, from 20 degrees Celsius. */
	WARM_DAY

}

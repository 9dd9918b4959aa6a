package measuredwalk.tolerance.simulation;

import java.util.List;

import measuredwalk.signs.Severity;
import measuredwalk.signs.Sign;
import measuredwalk.tolerance.ToleranceEvent;
import measuredwalk.tolerance.ToleranceEvent.MorningSeen;
import measuredwalk.tolerance.ToleranceEvent.WalkTaken;

/** How the paper rules read an answer. */
enum Trouble {

	/** Not an answer. */
	NOTHING_TOLD,

	NONE,

	/**
	 * A sign on a walk. Stiff mornings are left out: dogs with arthritis have them
	 * anyway.
	 */
	SOME,

	/** A morning with a clear sign, which is what a flare begins as. */
	FLARE;

	static Trouble of(ToleranceEvent event) {
		if (event instanceof WalkTaken walk) {
			return anyPresent(walk.signs()) ? SOME : NONE;
		}
		return (event instanceof MorningSeen morning) ? ofMorning(morning) : NOTHING_TOLD;
	}

	private static Trouble ofMorning(MorningSeen morning) {
		return morning.signs().stream().anyMatch(Trouble::clear) ? FLARE : NONE;
	}

	private static boolean anyPresent(List<Sign> signs) {
		return signs.stream().anyMatch(Sign::present);
	}

	private static boolean clear(Sign sign) {
		return sign.present() && sign.severity() != null && sign.severity() != Severity.MILD;
	}

}

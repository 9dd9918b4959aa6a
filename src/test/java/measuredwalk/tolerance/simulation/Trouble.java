package measuredwalk.tolerance.simulation;

import java.util.List;

import measuredwalk.signs.Overall;
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

	/** A sign on a walk, or a morning that is worse or stiff and not said to be usual. */
	SOME,

	/**
	 * A morning with a clear sign: worse than usual since yesterday, which is what a
	 * flare begins as.
	 */
	FLARE;

	static Trouble of(ToleranceEvent event) {
		if (event instanceof WalkTaken walk) {
			return anyPresent(walk.signs()) ? SOME : NONE;
		}
		return (event instanceof MorningSeen morning) ? ofMorning(morning) : NOTHING_TOLD;
	}

	private static Trouble ofMorning(MorningSeen morning) {
		if (morning.signs().stream().anyMatch(Trouble::clear)) {
			return FLARE;
		}
		boolean worse = morning.overall() == Overall.WORSE;
		boolean usual = morning.overall() == Overall.USUAL;
		return (worse || (anyPresent(morning.signs()) && !usual)) ? SOME : NONE;
	}

	private static boolean anyPresent(List<Sign> signs) {
		return signs.stream().anyMatch(Sign::present);
	}

	private static boolean clear(Sign sign) {
		return sign.present() && sign.severity() != null && sign.severity() != Severity.MILD;
	}

}

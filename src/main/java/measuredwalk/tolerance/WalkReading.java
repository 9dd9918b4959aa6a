package measuredwalk.tolerance;

import java.util.List;

import measuredwalk.signs.Moment;
import measuredwalk.signs.Sign;

/**
 * Reads a walk's signs into evidence: how bad, and between which minutes they began.
 * Where signs began is told in minutes of load. A walk without signs says no more than
 * its plain minutes do, however hard it was: what a load counts for is common practice,
 * and may hold for a part of the walk only.
 */
final class WalkReading {

	private final WalkSettings settings;

	WalkReading(WalkSettings settings) {
		this.settings = settings;
	}

	/**
	 * Reads a walk.
	 * @param walk the walk
	 * @param carried load carried into it
	 * @param plain the same if no walk had been harder than usual
	 * @return the evidence
	 */
	WalkEvidence read(ToleranceEvent.WalkTaken walk, double carried, double plain) {
		List<Sign> signs = SignMeaning.counting(walk.signs());
		if (signs.isEmpty()) {
			return WalkEvidence.clean(plain + walk.minutes(), walk.late());
		}
		double perMinute = walk.load().factor();
		int grade = signs.stream().mapToInt(SignMeaning::grade).max().orElseThrow();
		double[] onset = firstOnset(signs, walk.minutes());
		double after = (onset[0] > 0) ? carried + perMinute * onset[0] : 0;
		double window = onset[1] - onset[0];
		return new WalkEvidence(carried + perMinute * walk.minutes(), grade, after, carried + perMinute * onset[1],
				window / Math.max(window, walk.minutes()), walk.late());
	}

	private double[] firstOnset(List<Sign> signs, double minutes) {
		double[] first = { 0, minutes };
		for (Sign sign : signs) {
			double[] onset = onset(sign, minutes);
			if (onset[1] < first[1] || (onset[1] == first[1] && onset[0] > first[0])) {
				first = onset;
			}
		}
		return first;
	}

	private double[] onset(Sign sign, double minutes) {
		if (sign.onsetMinute() != null) {
			double by = Math.max(1, Math.min(sign.onsetMinute(), minutes));
			return new double[] { Math.max(0, by - this.settings.onsetWindow()), by };
		}
		double third = minutes / 3;
		if (sign.when() == Moment.START) {
			return new double[] { 0, third };
		}
		if (sign.when() == Moment.MIDDLE) {
			return new double[] { third, 2 * third };
		}
		return new double[] { (sign.when() == Moment.END) ? 2 * third : 0, minutes };
	}

}

package measuredwalk.tolerance;

import java.util.List;

/**
 * What the clinical layer made of the belief's dose for a whole day.
 *
 * @param minutes minutes of each walk
 * @param walks number of walks
 * @param mostMinutes the most that the limits would have allowed, for the owner's range
 * @param advice what kind of day to make of it
 * @param reasons why, most important first
 */
record Decision(double minutes, int walks, double mostMinutes, Advice advice, List<Reason> reasons) {

	Decision {
		reasons = List.copyOf(reasons);
	}

}

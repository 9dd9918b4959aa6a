package measuredwalk.tolerance;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

import measuredwalk.signs.Sign;
import measuredwalk.tolerance.ToleranceEvent.WalkTaken;

/**
 * The same day with fewer of the signs that were told, and with its walks as hard as they
 * were told to be or as usual. A mixture of owner classes can take a further sign as good
 * news ('this owner tells everything'), and a hard walk can excuse a sign. The dose is
 * the least over all lighter versions of the day, so that neither a further sign nor a
 * load raises it.
 */
final class Lighter {

	/** More versions than this are not weighed; real days have one to four. */
	private static final int MOST_VERSIONS = 256;

	private Lighter() {
	}

	/**
	 * All versions of a day's walks with the same or fewer signs and loads, the day
	 * itself first.
	 * @param walks the walks
	 * @return the versions
	 */
	static List<List<WalkTaken>> versions(List<WalkTaken> walks) {
		List<List<WalkTaken>> versions = new ArrayList<>();
		versions.add(List.of());
		for (WalkTaken walk : walks) {
			List<List<WalkTaken>> longer = new ArrayList<>();
			for (List<WalkTaken> version : versions) {
				for (WalkTaken lighter : lighter(walk)) {
					List<WalkTaken> next = new ArrayList<>(version);
					next.add(lighter);
					longer.add(next);
				}
			}
			versions = (longer.size() <= MOST_VERSIONS) ? longer : longer.subList(0, MOST_VERSIONS);
		}
		return versions;
	}

	private static List<WalkTaken> lighter(WalkTaken walk) {
		List<WalkTaken> lighter = new ArrayList<>();
		for (List<Sign> signs : subsets(walk.signs())) {
			lighter.add(as(walk, signs, walk.load()));
			if (walk.load().isHarder()) {
				lighter.add(as(walk, signs, Load.USUAL));
			}
		}
		return lighter;
	}

	private static List<List<Sign>> subsets(List<Sign> signs) {
		List<Sign> counting = SignMeaning.counting(signs);
		Set<List<Sign>> subsets = new LinkedHashSet<>();
		subsets.add(counting);
		for (Sign left : counting) {
			for (List<Sign> subset : List.copyOf(subsets)) {
				if (subsets.size() < MOST_VERSIONS) {
					subsets.add(subset.stream().filter((sign) -> !sign.equals(left)).toList());
				}
			}
		}
		return List.copyOf(subsets);
	}

	private static WalkTaken as(WalkTaken walk, List<Sign> signs, Load load) {
		return new WalkTaken(walk.date(), walk.time(), walk.minutes(), walk.minutesLow(), walk.minutesHigh(),
				walk.distanceMetres(), signs, walk.late(), load);
	}

}

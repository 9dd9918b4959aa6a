package measuredwalk.reading;

import java.util.ArrayList;
import java.util.List;

import measuredwalk.reading.observation.Observation;
import measuredwalk.signs.Sign;
import org.jspecify.annotations.Nullable;

/**
 * Says of which fields the reading is not sure, and asks about the least sure one. A
 * field is sure when its words have one reading, a guess when they have two or are not
 * plausible, and missing when they have none; only guesses are asked about.
 */
final class Doubts {

	/**
	 * Accepted speeds of a walk in km/h; from 0.3 and to 9 it is asked back (bands ours).
	 */
	private static final double SLOWEST = 1;

	private static final double FASTEST = 6;

	/** The longest walk that is not asked back, in minutes. */
	private static final double LONGEST_MINUTES = 180;

	private final List<String> paths = new ArrayList<>();

	private @Nullable AskBack askBack;

	Doubts(List<WalkTold> walks, List<Sign> signs, List<Observation> observations) {
		for (int index = 0; index < walks.size(); index++) {
			addWalk("walks[" + index + "]", walks.get(index));
		}
		for (int index = 0; index < signs.size(); index++) {
			addSign("signs[" + index + "]", signs.get(index), observations);
		}
	}

	List<String> paths() {
		return this.paths;
	}

	@Nullable AskBack askBack() {
		return this.askBack;
	}

	private void addWalk(String path, WalkTold walk) {
		Double minutes = walk.minutes();
		if (minutes != null && minutes > LONGEST_MINUTES) {
			add(path + ".minutes", List.of(words(minutes), words(minutes / 10)));
		}
		double speed = kilometresPerHour(walk);
		if (minutes != null && (speed < SLOWEST || speed > FASTEST)) {
			add(path + ".distanceMetres", List.of(Math.round(walk.distanceMetres()) + " metres", words(minutes)));
		}
	}

	private void addSign(String path, Sign sign, List<Observation> observations) {
		boolean doubted = observations.stream()
			.anyMatch((seen) -> seen.sign().kind() == sign.kind() && seen.context().uncertain());
		if (doubted && sign.present()) {
			String name = sign.kind().code().replace('-', ' ');
			add(path, List.of(name, "no " + name));
		}
	}

	private void add(String path, List<String> readings) {
		this.paths.add(path);
		if (this.askBack == null) {
			this.askBack = new AskBack(path, readings);
		}
	}

	private static String words(double minutes) {
		return Math.round(minutes) + " minutes";
	}

	/**
	 * How fast a walk was.
	 * @param walk the walk
	 * @return kilometres an hour, or a usual speed when distance or minutes are not known
	 */
	static double kilometresPerHour(WalkTold walk) {
		if (walk.distanceMetres() == null || walk.minutes() == null) {
			return (SLOWEST + FASTEST) / 2;
		}
		return walk.distanceMetres() / 1000 / (walk.minutes() / 60);
	}

}

package measuredwalk.reading.amount;

import java.util.Map;
import java.util.Set;

import measuredwalk.reading.words.Words;

/** How often a walk was taken, where its length is told for each: 'twice, ten each'. */
final class TimesTold {

	private static final Map<String, Integer> TIMES = Map.ofEntries(Map.entry("twice", 2), Map.entry("two", 2),
			Map.entry("2", 2), Map.entry("both", 2), Map.entry("three", 3), Map.entry("3", 3), Map.entry("thrice", 3),
			Map.entry("four", 4), Map.entry("4", 4), Map.entry("couple", 2), Map.entry("five", 5), Map.entry("5", 5),
			Map.entry("six", 6), Map.entry("6", 6));

	private static final Set<String> ROUNDS = Set.of("lap", "loop", "circuit", "track", "round", "ring", "oval",
			"block", "path");

	private static final Set<String> LAPS = Set.of("laps", "loops", "circuits", "rounds", "times", "goes", "turns",
			"lengths");

	private TimesTold() {
	}

	/**
	 * How many laps of a known length: 'two laps of the 400m track', '600m loop twice'.
	 */
	static int laps(int from, int to, Words words) {
		if (to >= words.size() || words.isBreakBefore(to) || !ROUNDS.contains(words.form(to))) {
			return 1;
		}
		for (int at = from - 1; at >= 0 && !words.isBreakBefore(at + 1); at--) {
			Integer times = TIMES.get(words.form(at));
			if (times != null && (LAPS.contains(words.form(at + 1)) || times(words, at))) {
				return times;
			}
		}
		for (int at = to + 1; at < words.size() && !words.isBreakBefore(at); at++) {
			Integer times = TIMES.get(words.form(at));
			if (times != null && (times(words, at) || words.is(at + 1, "times"))) {
				return times;
			}
		}
		return 1;
	}

	private static boolean times(Words words, int at) {
		return words.is(at, "twice") || words.is(at, "thrice");
	}

	static int before(int word, Words words) {
		for (int at = word - 1; at >= 0; at--) {
			Integer times = TIMES.get(words.form(at));
			if (times != null) {
				return times;
			}
		}
		return 2;
	}

}

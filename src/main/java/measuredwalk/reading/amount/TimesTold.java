package measuredwalk.reading.amount;

import java.util.Map;

import measuredwalk.reading.words.Words;

/** How often a walk was taken, where its length is told for each: 'twice, ten each'. */
final class TimesTold {

	private static final Map<String, Integer> TIMES = Map.of("twice", 2, "two", 2, "2", 2, "both", 2, "three", 3, "3",
			3, "thrice", 3, "four", 4, "4", 4, "couple", 2);

	private TimesTold() {
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

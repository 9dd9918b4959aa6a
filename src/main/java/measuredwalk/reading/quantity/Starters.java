package measuredwalk.reading.quantity;

import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Words that a quantity may begin with although they are none of its parts. */
final class Starters {

	private static final Set<String> WORDS = new HashSet<>(List.of("between", "from", "anywhere", "minus", "negative",
			"point", "the", "twice", "thrice", "in", "all", "early", "late", "mid", "-"));

	static {
		WORDS.addAll(Bounds.firstWords());
		WORDS.addAll(DayParts.firstWords());
	}

	private Starters() {
	}

	static boolean has(String word) {
		return WORDS.contains(word);
	}

}

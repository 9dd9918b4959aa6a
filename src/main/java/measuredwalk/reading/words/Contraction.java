package measuredwalk.reading.words;

import java.util.Map;

import org.jspecify.annotations.Nullable;

/** Takes words with an apostrophe apart. */
final class Contraction {

	private static final Map<String, String> NEGATED = Map.of("won't", "will", "can't", "can", "shan't", "shall",
			"ain't", "is");

	private static final Map<String, String> VERBS = Map.of("m", "am", "re", "are", "ve", "have", "ll", "will", "d",
			"would");

	private static final java.util.Set<String> PRONOUNS = java.util.Set.of("he", "she", "it", "that", "there", "what",
			"who", "here", "where", "how", "everything", "nothing", "all");

	private static final java.util.Set<String> PERSONS = java.util.Set.of("i", "you", "we", "they");

	private Contraction() {
	}

	/** "she'd" is 'she would'; "wee'd" is no such thing. */
	private static boolean isSubject(String word) {
		return PRONOUNS.contains(word) || PERSONS.contains(word);
	}

	/**
	 * The verb of a negated one.
	 * @param word such as "won't"
	 * @return such as 'will'
	 */
	static String verbOf(String word) {
		return NEGATED.getOrDefault(word, word.substring(0, word.length() - "n't".length()));
	}

	/**
	 * The verb that hangs on a pronoun.
	 * @param word such as "she's"
	 * @param apostrophe index of the apostrophe
	 * @return such as 'is', or null for a possessive ("the dog's")
	 */
	static @Nullable String verbAfter(String word, int apostrophe) {
		String rest = word.substring(apostrophe + 1);
		if (rest.equals("s")) {
			return PRONOUNS.contains(word.substring(0, apostrophe)) ? "is" : null;
		}
		if (rest.equals("d") && !isSubject(word.substring(0, apostrophe))) {
			return null;
		}
		return VERBS.get(rest);
	}

}

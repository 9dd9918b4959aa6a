package measuredwalk.reading.lexicon;

import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The forms that an English word takes, so that a lexicon need only name the plain one.
 *
 * <p>
 * Forms that are no words do no harm: nobody types them.
 */
final class Inflections {

	private static final String VOWELS = "aeiou";

	private static final Map<String, List<String>> IRREGULAR = irregular();

	private Inflections() {
	}

	/**
	 * All forms of a word.
	 * @param word the plain form, lower case
	 * @return the word itself and its forms
	 */
	static Set<String> of(String word) {
		Set<String> forms = new LinkedHashSet<>(List.of(word));
		if (word.length() < 3 || !word.chars().allMatch((letter) -> letter >= 'a' && letter <= 'z')) {
			forms.addAll(IRREGULAR.getOrDefault(word, List.of()));
			return forms;
		}
		forms.addAll(IRREGULAR.getOrDefault(word, regular(word)));
		if (word.endsWith("ing")) {
			forms.add(word.substring(0, word.length() - 1));
		}
		return forms;
	}

	private static List<String> regular(String word) {
		char last = word.charAt(word.length() - 1);
		char before = word.charAt(word.length() - 2);
		String stem = word.substring(0, word.length() - 1);
		if (last == 'e') {
			String adverb = word.endsWith("le") ? stem + "y" : word;
			return List.of(word + "s", word + "d", stem + "ing", stem + "in", word + "r", word + "st", word + "ing",
					adverb);
		}
		if (last == 'y' && VOWELS.indexOf(before) < 0) {
			return List.of(stem + "ies", stem + "ied", word + "ing", stem + "ier", stem + "iest", stem + "ily",
					word + "s");
		}
		String doubled = endsShort(word) ? word + last : word;
		String plural = (last == 's' || last == 'x' || last == 'z' || word.endsWith("ch") || word.endsWith("sh"))
				? word + "es" : word + "s";
		return List.of(plural, doubled + "ed", doubled + "ing", doubled + "er", doubled + "est", word + "ed",
				word + "ing", word + "in", doubled + "in");
	}

	private static boolean endsShort(String word) {
		int length = word.length();
		char last = word.charAt(length - 1);
		return VOWELS.indexOf(last) < 0 && last != 'w' && last != 'x' && last != 'y'
				&& VOWELS.indexOf(word.charAt(length - 2)) >= 0
				&& (length == 3 || VOWELS.indexOf(word.charAt(length - 3)) < 0);
	}

	private static Map<String, List<String>> irregular() {
		Map<String, List<String>> forms = new HashMap<>();
		for (String line : LexiconFiles.lines("irregular.txt")) {
			List<String> words = List.of(line.split(" ", -1));
			forms.put(words.get(0), words.subList(1, words.size()));
		}
		return Map.copyOf(forms);
	}

}

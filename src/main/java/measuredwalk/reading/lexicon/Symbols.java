package measuredwalk.reading.lexicon;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import java.util.Set;

/** The numbers that stand for words, forms and classes in the trie. */
final class Symbols {

	private static final int[] NOTHING = {};

	private final Map<String, Integer> numbers = new HashMap<>(
			Map.of(Phrase.GAP, PhraseTrie.GAP, Phrase.SMALL_WORDS, PhraseTrie.SMALL_WORDS));

	private final Map<String, int[]> byForm = new HashMap<>();

	/**
	 * The symbol of a lexicon word; the forms it stands for are known from now on.
	 * @param word a plain word, {@code =word}, {@code <class>} or the gap
	 * @return its number
	 */
	int of(String word) {
		Integer known = this.numbers.get(word);
		if (known != null) {
			return known;
		}
		int number = this.numbers.size();
		this.numbers.put(word, number);
		if (word.startsWith("=")) {
			addForm(word.substring(1), number);
			if (word.endsWith("ing")) {
				addForm(word.substring(1, word.length() - 1), number);
			}
		}
		else if (!word.startsWith("<")) {
			Inflections.of(word).forEach((form) -> addForm(form, number));
		}
		return number;
	}

	/**
	 * Puts words into a class.
	 * @param name the class, such as {@code <leg>}
	 * @param words plain words or {@code =word}
	 */
	void addClass(String name, Set<String> words) {
		int number = of(name);
		for (String word : words) {
			if (word.startsWith("=")) {
				addForm(word.substring(1), number);
			}
			else {
				Inflections.of(word).forEach((form) -> addForm(form, number));
			}
		}
	}

	boolean hasClass(String name) {
		return this.numbers.containsKey(name);
	}

	/**
	 * The symbols that a typed word may stand for.
	 * @param form the typed word, lower case
	 * @return their numbers, empty when no lexicon knows it
	 */
	int[] ofForm(String form) {
		return this.byForm.getOrDefault(form, NOTHING);
	}

	/**
	 * Every form that some lexicon knows.
	 * @return lower-case words
	 */
	Set<String> forms() {
		return this.byForm.keySet();
	}

	private void addForm(String form, int number) {
		int[] before = ofForm(form);
		if (Arrays.stream(before).anyMatch((symbol) -> symbol == number)) {
			return;
		}
		int[] after = Arrays.copyOf(before, before.length + 1);
		after[before.length] = number;
		this.byForm.put(form, after);
	}

}

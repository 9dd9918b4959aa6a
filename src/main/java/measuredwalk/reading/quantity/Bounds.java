package measuredwalk.reading.quantity;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

import org.jspecify.annotations.Nullable;

/** Finds the words round an amount that bound it or make it approximate. */
final class Bounds {

	/**
	 * A phrase that was found.
	 *
	 * @param bound what it makes of the amount
	 * @param end index behind it
	 */
	record Found(Bound bound, int end) {
	}

	private record Phrase(Bound bound, List<String> words) {
	}

	private static final Map<String, List<Phrase>> BEFORE = new HashMap<>();

	private static final Map<String, List<Phrase>> AFTER = new HashMap<>();

	static {
		LexiconFile.read("bounds.txt", Bounds::add);
		BEFORE.values().forEach(Bounds::longestFirst);
		AFTER.values().forEach(Bounds::longestFirst);
	}

	private Bounds() {
	}

	/** The phrase that begins there and stands before an amount, or null. */
	static @Nullable Found before(Terms terms, int at) {
		return longest(BEFORE.get(terms.word(at)), terms, at);
	}

	/** The phrase that begins there and stands behind an amount, or null. */
	static @Nullable Found after(Terms terms, int at) {
		int ish = terms.is(at, "'") && terms.glued(at + 1) ? at + 1 : at;
		if (terms.is(ish, "ish")) {
			return new Found(Bound.ABOUT, ish + 1);
		}
		Found found = longest(AFTER.get(terms.word(at)), terms, at);
		return found == null || beginsAnother(terms, found.end()) ? null : found;
	}

	/** The words that a phrase before an amount may begin with. */
	static java.util.Set<String> firstWords() {
		return BEFORE.keySet();
	}

	/** In '30 and less than 40' the 'and less' is of the second amount. */
	private static boolean beginsAnother(Terms terms, int end) {
		Numeral next = terms.numeral(end);
		return next.isCardinal() || next == Numeral.PART || terms.is(end, "than") || terms.is(end, "or")
				|| (next == Numeral.ARTICLE && terms.numeral(end + 1) != Numeral.NONE);
	}

	private static @Nullable Found longest(@Nullable List<Phrase> phrases, Terms terms, int at) {
		if (phrases == null) {
			return null;
		}
		for (Phrase phrase : phrases) {
			if (matches(phrase.words(), terms, at)) {
				return new Found(phrase.bound(), at + phrase.words().size());
			}
		}
		return null;
	}

	private static boolean matches(List<String> words, Terms terms, int at) {
		for (int word = 1; word < words.size(); word++) {
			if (!terms.is(at + word, words.get(word))) {
				return false;
			}
		}
		return true;
	}

	private static void add(String[] line) {
		Map<String, List<Phrase>> phrases = line[0].equals("before") ? BEFORE : AFTER;
		List<String> words = List.of(line).subList(2, line.length);
		Phrase phrase = new Phrase(Bound.valueOf(line[1].toUpperCase(Locale.ROOT)), words);
		phrases.computeIfAbsent(words.get(0), (first) -> new ArrayList<>()).add(phrase);
	}

	private static void longestFirst(List<Phrase> phrases) {
		phrases.sort((one, other) -> other.words().size() - one.words().size());
	}

}

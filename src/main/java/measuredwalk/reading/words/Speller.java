package measuredwalk.reading.words;

import java.util.Arrays;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;

import org.jspecify.annotations.Nullable;

/**
 * Repairs words that no English word list knows to the lexicon word most likely meant.
 * Candidates are found by their deletions (the symmetric delete method, Garbe 2012), so
 * that one look-up needs no pass over the lexicon.
 */
public final class Speller {

	/** Shorter words are too easily turned into others. */
	private static final int SHORTEST = 3;

	private static final int LONGEST = 24;

	/** Words this long may carry two slips. */
	private static final int TWO_SLIPS = 7;

	private static final String[] NOTHING = {};

	private final Map<String, String[]> byDeletion = new HashMap<>();

	/**
	 * A speller that repairs to these words.
	 * @param words lower-case words
	 */
	public Speller(Collection<String> words) {
		Map<String, Set<String>> collected = new HashMap<>();
		for (String word : words) {
			if (word.length() >= SHORTEST && word.chars().allMatch(Character::isLetter)) {
				for (String deletion : deletions(word)) {
					collected.computeIfAbsent(deletion, (key) -> new HashSet<>()).add(word);
				}
			}
		}
		collected.forEach((deletion, meant) -> this.byDeletion.put(deletion, meant.toArray(String[]::new)));
	}

	/**
	 * The word most likely meant.
	 * @param typed an unknown word, lower case
	 * @return the word meant, or null when none is near enough or two are as near
	 */
	public @Nullable String repaired(String typed) {
		if (typed.length() < SHORTEST || typed.length() > LONGEST) {
			return null;
		}
		String best = null;
		double bestCost = limit(typed.length());
		Set<String> tried = new HashSet<>();
		for (String deletion : deletions(typed)) {
			for (String meant : this.byDeletion.getOrDefault(deletion, NOTHING)) {
				double cost = tried.add(meant) ? SlipCost.of(typed, meant, bestCost) : Double.MAX_VALUE;
				if (cost < bestCost || (cost == bestCost && best != null && meant.compareTo(best) < 0)) {
					best = meant;
					bestCost = cost;
				}
			}
		}
		return best;
	}

	/** The most that a repair may cost; just above it is refused. */
	private static double limit(int length) {
		if (length == SHORTEST) {
			return 0.55;
		}
		return (length < 5) ? 0.95 : (length < TWO_SLIPS) ? 1.15 : 1.75;
	}

	private static Set<String> deletions(String word) {
		Set<String> once = new HashSet<>();
		once.add(word);
		once.addAll(Arrays.asList(without(word)));
		if (word.length() < TWO_SLIPS - 1) {
			return once;
		}
		Set<String> twice = new HashSet<>(once);
		for (String shorter : once) {
			twice.addAll(Arrays.asList(without(shorter)));
		}
		return twice;
	}

	private static String[] without(String word) {
		String[] shorter = new String[word.length()];
		for (int at = 0; at < shorter.length; at++) {
			shorter[at] = word.substring(0, at) + word.substring(at + 1);
		}
		return shorter;
	}

}

package measuredwalk.reading.words;

import java.util.List;
import java.util.Map;
import java.util.Set;

import measuredwalk.reading.Token;
import measuredwalk.reading.quantity.Quantities;
import org.jspecify.annotations.Nullable;

/**
 * Words that dictation wrote as another one of the same sound. 'Ate minutes' and 'too
 * miles' are numbers only right before a unit of time or length; 'there was know limp' is
 * a denial, and 'eight her breakfast' tells of eating.
 */
final class HeardWords {

	private static final Map<String, String> NUMBERS = Map.of("won", "one", "too", "two", "tree", "three", "fore",
			"four", "ate", "eight", "ait", "eight", "tin", "ten", "tan", "ten");

	/** Words that also stand before a unit in plain English: 'out for hours'. */
	private static final Map<String, String> AFTER_MEASURING_WORDS = Map.of("for", "four", "to", "two");

	/** Behind these a number is due. */
	private static final Set<String> MEASURING = Set.of("about", "around", "nearly", "roughly", "almost", "for", "did",
			"done", "managed", "maybe", "after", "only", "least", "most", "another", "last", "first");

	/** Behind these 'know' can only be a 'no'. */
	private static final Set<String> BEFORE_DENIAL = Set.of("was", "were", "is", "had", "has", "with", "there's",
			"showed", "saw", "and", "but");

	/** Behind 'know' these make it the verb. */
	private static final Set<String> KNOWN = Set.of("that", "how", "what", "if", "why", "when", "where", "whether",
			"he", "she", "it", "him", "her", "them", "i", "you", "the", "this", "about", "better", "my", "its");

	/** Behind 'eight' these make it 'ate'. */
	private static final Set<String> EATEN = Set.of("her", "his", "all", "breakfast", "dinner", "tea", "up", "every",
			"everything", "nothing", "some", "most", "half", "well");

	/** Behind 'half our' these leave it 'our'. */
	private static final Set<String> OURS = Set.of("usual", "normal", "walk", "walks", "loop", "route", "regular",
			"circuit", "lap", "time", "distance");

	private static final Set<String> BEFORE_NIGHT = Set.of("the", "last", "all", "at", "every", "good");

	private static final int LONGEST = 5;

	private HeardWords() {
	}

	/**
	 * Puts the words that must have been said for those that were heard, in the list
	 * itself.
	 */
	static void repair(List<Token> tokens) {
		for (int at = 0; at < tokens.size(); at++) {
			String before = (at > 0) ? tokens.get(at - 1).word() : "";
			String next = (at + 1 < tokens.size()) ? tokens.get(at + 1).word() : "";
			String said = said(tokens.get(at).word(), before, next);
			if (said != null) {
				tokens.set(at, tokens.get(at).withWord(said));
			}
		}
	}

	private static @Nullable String said(String heard, String before, String next) {
		if (heard.length() > LONGEST) {
			return heard.equals("knight") && BEFORE_NIGHT.contains(before) ? "night" : null;
		}
		String number = NUMBERS.get(heard);
		if (number == null && MEASURING.contains(before)) {
			number = AFTER_MEASURING_WORDS.get(heard);
		}
		if (number != null && Quantities.measuresWalks(next)) {
			return number;
		}
		return switch (heard) {
			case "know" -> BEFORE_DENIAL.contains(before) && !next.isEmpty() && !KNOWN.contains(next) ? "no" : null;
			case "our" -> before.equals("half") && !OURS.contains(next) ? "hour" : null;
			case "eight" -> EATEN.contains(next) ? "ate" : null;
			default -> null;
		};
	}

}

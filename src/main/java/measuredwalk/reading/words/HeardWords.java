package measuredwalk.reading.words;

import java.util.List;
import java.util.Map;
import java.util.Set;

import measuredwalk.reading.Token;
import measuredwalk.reading.quantity.Quantities;

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

	private static final int LONGEST = 5;

	private HeardWords() {
	}

	/** Puts numbers for the words that can only be heard ones, in the list itself. */
	static void repair(List<Token> tokens) {
		for (int at = 0; at + 1 < tokens.size(); at++) {
			Token token = tokens.get(at);
			String number = (token.word().length() > LONGEST) ? null : NUMBERS.get(token.word());
			if (number == null && token.word().length() <= LONGEST && at > 0
					&& MEASURING.contains(tokens.get(at - 1).word())) {
				number = AFTER_MEASURING_WORDS.get(token.word());
			}
			if (number != null && Quantities.measuresWalks(tokens.get(at + 1).word())) {
				tokens.set(at, token.withWord(number));
			}
			else if (at > 0 && isDenial(tokens, at)) {
				tokens.set(at, token.withWord("no"));
			}
			else if (token.is("eight") && EATEN.contains(tokens.get(at + 1).word())) {
				tokens.set(at, token.withWord("ate"));
			}
		}
	}

	private static boolean isDenial(List<Token> tokens, int at) {
		return tokens.get(at).is("know") && BEFORE_DENIAL.contains(tokens.get(at - 1).word())
				&& !KNOWN.contains(tokens.get(at + 1).word());
	}

}

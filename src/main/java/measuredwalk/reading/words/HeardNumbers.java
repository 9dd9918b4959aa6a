package measuredwalk.reading.words;

import java.util.List;
import java.util.Map;
import java.util.Set;

import measuredwalk.reading.Token;
import measuredwalk.reading.quantity.Quantities;

/**
 * Numbers that dictation wrote as another word of the same sound: 'ate minutes', 'too
 * miles'. Only right before a unit of time or length are they read as numbers.
 */
final class HeardNumbers {

	private static final Map<String, String> NUMBERS = Map.of("won", "one", "too", "two", "tree", "three", "fore",
			"four", "ate", "eight", "ait", "eight", "tin", "ten", "tan", "ten");

	/** Words that also stand before a unit in plain English: 'out for hours'. */
	private static final Map<String, String> AFTER_MEASURING_WORDS = Map.of("for", "four", "to", "two");

	/** Behind these a number is due. */
	private static final Set<String> MEASURING = Set.of("about", "around", "nearly", "roughly", "almost", "for", "did",
			"done", "managed", "maybe", "after", "only", "least", "most", "another", "last", "first");

	private HeardNumbers() {
	}

	/** Puts numbers for the words that can only be heard ones, in the list itself. */
	static void repair(List<Token> tokens) {
		for (int at = 0; at + 1 < tokens.size(); at++) {
			Token token = tokens.get(at);
			String number = NUMBERS.get(token.word());
			if (number == null && at > 0 && MEASURING.contains(tokens.get(at - 1).word())) {
				number = AFTER_MEASURING_WORDS.get(token.word());
			}
			if (number != null && Quantities.measuresWalks(tokens.get(at + 1).word())) {
				tokens.set(at, token.withWord(number));
			}
		}
	}

}

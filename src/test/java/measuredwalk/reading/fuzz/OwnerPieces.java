package measuredwalk.reading.fuzz;

import com.code_intelligence.jazzer.api.FuzzedDataProvider;

/**
 * Puts texts together from pieces that the reader's grammar knows, in any order, so that
 * the search gets behind the word list at once.
 */
final class OwnerPieces {

	private static final int MOST_PIECES = 60;

	private static final int LONGEST_NOISE = 6;

	private static final String[] PIECES = { "half", "a", "quarter", "to", "past", "10", "25", "ten", "twenty", "min",
			"minutes", "hours", "mile", "km", "and", "-", "/", "x", "of", "from", "between", "about", "less than",
			"or so", "7:10", "7.10", "am", "pm", "'", "\"", "in the morning", "£", "%", "+", "the usual", "longer than",
			"same as yesterday", "twice", "back", "left", "right", "near hind", "front", "no", "not", "never", "didn't",
			"can't say", "hardly", "apart from", "until", "but", "if", "used to", "last year", "the other dog", "maybe",
			"limp", "limping", "stiff", "slowed up", "lay down", "panting", "sore", "dragging", "collapsed",
			"white gums", "can't get up", "fit", "sick", "off his food", "worse", "better", "fine", "a bit", "very",
			"after", "the last five minutes", "straight away", "half way", "on the way home", "last night",
			"this morning", "tuesday", "yesterday", "sorry", "meant", "i mean", "Bracken", "she", "he", "mg", "kg",
			"tablets", "?", "!", ".", ",", "\n", "(", ")", "🐾", "👍🏽", "½", "1/2", "0", "1e9", "999999999999", "-5" };

	private OwnerPieces() {
	}

	static String text(FuzzedDataProvider data) {
		StringBuilder text = new StringBuilder();
		for (int piece = 0; piece < MOST_PIECES && data.remainingBytes() > 0; piece++) {
			boolean noise = data.consumeInt(0, 9) == 0;
			text.append(noise ? data.consumeString(LONGEST_NOISE) : data.pickValue(PIECES));
			text.append(data.consumeInt(0, 7) == 0 ? "" : " ");
		}
		return text.toString();
	}

}

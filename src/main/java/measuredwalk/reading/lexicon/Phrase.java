package measuredwalk.reading.lexicon;

import java.util.ArrayList;
import java.util.List;

/**
 * One line of a lexicon file, written out: {@code drag|trail <leg>?} is the four phrases
 * 'drag', 'drag (leg)', 'trail' and 'trail (leg)'.
 *
 * <p>
 * A plain word stands for all its forms, {@code =word} for that form only,
 * {@code <class>} for any word of a class, {@code a|b} for either, {@code word?} may be
 * missing, and {@code ..} stands for up to three words.
 */
final class Phrase {

	static final String GAP = "..";

	private Phrase() {
	}

	/**
	 * Writes a line out.
	 * @param line the line
	 * @return the phrases it stands for, each a list of words
	 */
	static List<List<String>> writtenOut(String line) {
		List<List<String>> phrases = List.of(List.of());
		for (String part : line.split(" +")) {
			phrases = lengthened(phrases, part);
		}
		return phrases;
	}

	private static List<List<String>> lengthened(List<List<String>> phrases, String part) {
		boolean optional = part.endsWith("?");
		String words = optional ? part.substring(0, part.length() - 1) : part;
		List<List<String>> longer = new ArrayList<>();
		for (List<String> phrase : phrases) {
			if (optional) {
				longer.add(phrase);
			}
			for (String word : words.split("\\|")) {
				List<String> next = new ArrayList<>(phrase);
				next.add(word);
				longer.add(next);
			}
		}
		return longer;
	}

}

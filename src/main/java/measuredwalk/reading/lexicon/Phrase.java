package measuredwalk.reading.lexicon;

import java.util.ArrayList;
import java.util.List;

/**
 * One line of a lexicon file, written out: {@code drag|trail <leg>?} is the four phrases
 * 'drag', 'drag (leg)', 'trail' and 'trail (leg)'.
 *
 * <p>
 * A plain word stands for all its forms, {@code =word} for that form only,
 * {@code <class>} for any word of a class, {@code a|b} for either word, {@code (a b|c)}
 * for either of longer phrases, {@code word?} may be missing, {@code ..} stands for up to
 * three words, and {@code ~} for up to five small words ({@code class small}), so that
 * {@code <leg> ~ funny} is also 'leg has been a bit funny' but not 'leg, funny old day'.
 */
public final class Phrase {

	static final String GAP = "..";

	static final String SMALL_WORDS = "~";

	private Phrase() {
	}

	static boolean isGap(String word) {
		return word.equals(GAP) || word.equals(SMALL_WORDS);
	}

	/**
	 * Writes a line out.
	 * @param line the line
	 * @return the phrases it stands for, each a list of words
	 */
	public static List<List<String>> writtenOut(String line) {
		List<List<String>> phrases = List.of(List.of());
		for (String part : parts(line)) {
			phrases = lengthened(phrases, part);
		}
		return phrases;
	}

	/** The parts between blanks; a bracket holds its blanks. */
	static List<String> parts(String line) {
		List<String> parts = new ArrayList<>();
		StringBuilder part = new StringBuilder();
		int depth = 0;
		for (int at = 0; at < line.length(); at++) {
			char letter = line.charAt(at);
			depth += (letter == '(') ? 1 : (letter == ')') ? -1 : 0;
			if (letter == ' ' && depth == 0) {
				addTo(parts, part);
			}
			else {
				part.append(letter);
			}
		}
		addTo(parts, part);
		return parts;
	}

	private static void addTo(List<String> parts, StringBuilder part) {
		if (!part.isEmpty()) {
			parts.add(part.toString());
			part.setLength(0);
		}
	}

	private static List<List<String>> lengthened(List<List<String>> phrases, String part) {
		boolean optional = part.endsWith("?");
		List<List<String>> endings = endings(optional ? part.substring(0, part.length() - 1) : part);
		List<List<String>> longer = new ArrayList<>(optional ? phrases : List.of());
		for (List<String> phrase : phrases) {
			for (List<String> ending : endings) {
				List<String> next = new ArrayList<>(phrase);
				next.addAll(ending);
				longer.add(next);
			}
		}
		return longer;
	}

	private static List<List<String>> endings(String choice) {
		List<List<String>> endings = new ArrayList<>();
		if (choice.startsWith("(")) {
			for (String phrase : choice.substring(1, choice.length() - 1).split("\\|", -1)) {
				endings.addAll(writtenOut(phrase.strip()));
			}
			return endings;
		}
		for (String word : choice.split("\\|", -1)) {
			endings.add(List.of(word));
		}
		return endings;
	}

}

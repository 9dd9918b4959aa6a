package measuredwalk.messaging;

import java.util.ArrayList;
import java.util.List;

/** Splits a text that is too long for one message, at the end of a line or a word. */
final class Parts {

	private Parts() {
	}

	/**
	 * Splits a text.
	 * @param text the text
	 * @param longest the longest part, in UTF-16 code units, at least 2
	 * @return its parts in order, at least one
	 */
	static List<String> of(String text, int longest) {
		List<String> parts = new ArrayList<>();
		String rest = text;
		while (rest.length() > longest) {
			int end = end(rest, longest);
			parts.add(rest.substring(0, end).stripTrailing());
			rest = rest.substring(end).stripLeading();
		}
		if (parts.isEmpty() || !rest.isEmpty()) {
			parts.add(rest);
		}
		return List.copyOf(parts);
	}

	private static int end(String text, int longest) {
		int line = text.lastIndexOf('\n', longest);
		int word = text.lastIndexOf(' ', longest);
		if (line > longest / 2) {
			return line;
		}
		if (word > longest / 2) {
			return word;
		}
		return Character.isHighSurrogate(text.charAt(longest - 1)) ? longest - 1 : longest;
	}

}

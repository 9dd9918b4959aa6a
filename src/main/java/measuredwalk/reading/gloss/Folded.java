package measuredwalk.reading.gloss;

import java.text.Normalizer;

/** Words without their accents, as half of all telephone messages are typed. */
final class Folded {

	private Folded() {
	}

	/**
	 * A word without accents.
	 * @param word lower case
	 * @return the same letters, plain
	 */
	static String word(String word) {
		for (int at = 0; at < word.length(); at++) {
			if (word.charAt(at) >= 0x80) {
				return plain(word);
			}
		}
		return word;
	}

	private static String plain(String word) {
		String apart = Normalizer.normalize(word, Normalizer.Form.NFD);
		StringBuilder plain = new StringBuilder(apart.length());
		for (int at = 0; at < apart.length(); at++) {
			if (Character.getType(apart.charAt(at)) != Character.NON_SPACING_MARK) {
				plain.append(apart.charAt(at));
			}
		}
		return plain.toString();
	}

}

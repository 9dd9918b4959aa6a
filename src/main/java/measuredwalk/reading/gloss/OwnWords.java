package measuredwalk.reading.gloss;

/**
 * Tells at a glance whether a message has words of a language, so that nearly all
 * messages of other households cost nothing: a letter at a time, one table, no text made.
 */
public final class OwnWords {

	/** A power of two; some ten thousand words fill a small part of it. */
	private static final int PLACES = 1 << 16;

	/** One word may be a slip or a name; two are a message. */
	private static final int ENOUGH = 2;

	/** In a message of so few words one is enough. */
	private static final int SHORT = 4;

	/** A longer one must be made of the language's words nearly throughout, in fifths. */
	private static final int MOST_FIFTHS = 4;

	private static final byte SHARED = 1;

	private static final byte OWN = 2;

	/**
	 * The whole hash of the word at each place, so that hardly another word is taken for
	 * it.
	 */
	private final int[] hashes = new int[PLACES];

	private final byte[] kinds = new byte[PLACES];

	/**
	 * A glance for a language.
	 * @param glossary the language's glossary
	 */
	public OwnWords(Glossary glossary) {
		glossary.words().forEach((word) -> put(hash(word), SHARED));
		glossary.ownWords().forEach((word) -> put(hash(word), OWN));
	}

	private void put(int hash, byte kind) {
		int place = place(hash);
		this.hashes[place] = hash;
		this.kinds[place] = kind;
	}

	/** The place of a word, or the free one where it would stand. */
	private int place(int hash) {
		int place = (hash ^ (hash >>> 15) * 0x2c1b3c6d) & (PLACES - 1);
		while (this.kinds[place] != 0 && this.hashes[place] != hash) {
			place = (place + 1) & (PLACES - 1);
		}
		return place;
	}

	private static int hash(String word) {
		int hash = 0;
		for (int at = 0; at < word.length(); at++) {
			hash = next(hash, word.charAt(at));
		}
		return hash;
	}

	/**
	 * Whether a message has words of the language.
	 * @param text the message
	 * @return true when some are; rarely so of a message without any
	 */
	public boolean areIn(String text) {
		int words = 0;
		int own = 0;
		int shared = 0;
		int hash = 0;
		int length = 0;
		for (int at = 0; at <= text.length(); at++) {
			char letter = (at < text.length()) ? plain(text.charAt(at)) : ' ';
			if (letter >= 'a' && letter <= 'z') {
				hash = next(hash, letter);
				length++;
			}
			else if (length > 0) {
				words++;
				byte kind = this.kinds[place(hash)];
				own += (length > 1 && kind == OWN) ? 1 : 0;
				shared += (kind == SHARED) ? 1 : 0;
				hash = 0;
				length = 0;
			}
		}
		boolean throughout = (own + shared) * 5 >= words * MOST_FIFTHS;
		return own >= ENOUGH || (own > 0 && (words <= SHORT || throughout));
	}

	private static int next(int hash, char letter) {
		return hash * 31 + letter;
	}

	private static char plain(char letter) {
		if (letter < 0x80) {
			return (letter >= 'A' && letter <= 'Z') ? (char) (letter + ('a' - 'A')) : letter;
		}
		return switch (letter) {
			case 'á', 'Á', 'à', 'â', 'ä' -> 'a';
			case 'é', 'É', 'è', 'ê', 'ë' -> 'e';
			case 'í', 'Í', 'ì', 'î', 'ï' -> 'i';
			case 'ó', 'Ó', 'ò', 'ô', 'ö' -> 'o';
			case 'ú', 'Ú', 'ù', 'û', 'ü', 'Ü' -> 'u';
			case 'ñ', 'Ñ' -> 'n';
			default -> letter;
		};
	}

}

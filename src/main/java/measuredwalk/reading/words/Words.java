package measuredwalk.reading.words;

import java.util.List;

import measuredwalk.reading.Token;

/**
 * The words of a message as phrases and cues see them: contractions taken apart ("don't"
 * is 'do', 'not'), marks kept as the break before the word that follows. Not to be
 * changed once made.
 */
public final class Words {

	private static final int SOFT = 0;

	private static final int COMMA = 1;

	private static final int SENTENCE = 2;

	private final List<Token> tokens;

	private final String[] forms;

	private final int[][] symbols;

	private final int[] tokenOf;

	private final char[] markBefore;

	private final int size;

	Words(List<Token> tokens, WordsBuilder builder) {
		this.tokens = tokens;
		this.size = builder.size;
		this.forms = builder.forms;
		this.symbols = java.util.Arrays.copyOf(builder.symbols, builder.size);
		this.tokenOf = builder.tokenOf;
		this.markBefore = builder.markBefore;
	}

	/**
	 * The tokens they were made from, repaired.
	 * @return the tokens
	 */
	public List<Token> tokens() {
		return this.tokens;
	}

	/**
	 * How many words there are.
	 * @return 0 or more
	 */
	public int size() {
		return this.size;
	}

	/**
	 * A word's form.
	 * @param at index of the word
	 * @return lower case
	 */
	public String form(int at) {
		return this.forms[at];
	}

	/**
	 * Whether there is such a word at that place.
	 * @param at any index
	 * @param form lower case
	 * @return true when it is that word
	 */
	public boolean is(int at, String form) {
		return at >= 0 && at < this.size && this.forms[at].equals(form);
	}

	/**
	 * What the lexicon knows of each word.
	 * @return symbols, one array for each word
	 */
	public int[][] symbols() {
		return this.symbols;
	}

	/**
	 * The token that a word comes from.
	 * @param at index of the word
	 * @return index of its token
	 */
	public int token(int at) {
		return this.tokenOf[at];
	}

	/**
	 * The first word that comes from a token or a later one.
	 * @param token index of the token
	 * @return index of the word, or the number of words when there is none
	 */
	public int firstFrom(int token) {
		int low = 0;
		int high = this.size;
		while (low < high) {
			int middle = (low + high) >>> 1;
			if (this.tokenOf[middle] < token) {
				low = middle + 1;
			}
			else {
				high = middle;
			}
		}
		return low;
	}

	/**
	 * The mark that stands before a word, the strongest if there are several.
	 * @param at index of the word, or the number of words for the mark at the end
	 * @return the mark, such as ',' or '?', or 0 for none
	 */
	public char markBefore(int at) {
		return this.markBefore[at];
	}

	/**
	 * Whether a comma or a stronger mark stands before a word.
	 * @param at index of the word, or the number of words for the end
	 * @return true when one does; always true at the beginning and the end
	 */
	public boolean isBreakBefore(int at) {
		return at <= 0 || at >= this.size || strength(this.markBefore[at]) >= COMMA;
	}

	/**
	 * Whether a sentence ends before a word.
	 * @param at index of the word, or the number of words for the end
	 * @return true when one does; always true at the beginning and the end
	 */
	public boolean isSentenceBefore(int at) {
		return at <= 0 || at >= this.size || strength(this.markBefore[at]) == SENTENCE;
	}

	/**
	 * For each word the index after the last word before the next comma or stronger mark.
	 * @return the limits
	 */
	public int[] limits() {
		int[] limits = new int[this.size];
		int limit = this.size;
		for (int at = this.size - 1; at >= 0; at--) {
			limits[at] = limit;
			if (isBreakBefore(at)) {
				limit = at;
			}
		}
		return limits;
	}

	static int strength(char mark) {
		return switch (mark) {
			case '.', '!', '?', '\n' -> SENTENCE;
			case ',', ';', ':', '-', '(', ')', '~' -> COMMA;
			default -> SOFT;
		};
	}

}

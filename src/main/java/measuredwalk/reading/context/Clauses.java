package measuredwalk.reading.context;

import measuredwalk.reading.lexicon.Lexicon;
import measuredwalk.reading.lexicon.WordClass;
import measuredwalk.reading.words.Words;

/**
 * How words fall into clauses and sentences. Dictation has no marks, so a clause also
 * ends at joining words.
 */
public final class Clauses {

	private final int[] clause;

	private final int[] sentence;

	Clauses(Words words, Lexicon lexicon) {
		this.clause = new int[words.size()];
		this.sentence = new int[words.size()];
		int clauses = 0;
		int sentences = 0;
		for (int at = 1; at < words.size(); at++) {
			if (words.isSentenceBefore(at)) {
				sentences++;
			}
			if (words.isBreakBefore(at) || joins(words, at, lexicon)) {
				clauses++;
			}
			this.clause[at] = clauses;
			this.sentence[at] = sentences;
		}
	}

	private static boolean joins(Words words, int at, Lexicon lexicon) {
		int[][] symbols = words.symbols();
		return lexicon.isOf(symbols[at], WordClass.JOINING)
				|| (words.is(at, "and") && at + 1 < words.size() && lexicon.isOf(symbols[at + 1], WordClass.SUBJECT));
	}

	/**
	 * The clause that a word is in.
	 * @param at index of the word
	 * @return its number, from 0
	 */
	public int of(int at) {
		return this.clause[at];
	}

	/**
	 * The sentence that a word is in.
	 * @param at index of the word
	 * @return its number, from 0
	 */
	public int sentenceOf(int at) {
		return this.sentence[at];
	}

	/**
	 * The first word of the sentence that a word is in.
	 * @param at index of the word
	 * @return index of that word
	 */
	public int sentenceStart(int at) {
		int start = at;
		while (start > 0 && this.sentence[start - 1] == this.sentence[at]) {
			start--;
		}
		return start;
	}

	/**
	 * The index after the last word of the sentence that a word is in.
	 * @param at index of the word
	 * @return that index
	 */
	public int sentenceEnd(int at) {
		int end = at + 1;
		while (end < this.sentence.length && this.sentence[end] == this.sentence[at]) {
			end++;
		}
		return end;
	}

}

package measuredwalk.reading.context;

import java.util.Set;

import measuredwalk.reading.words.Words;

/**
 * How words fall into clauses and sentences. Dictation has no marks, so a clause also
 * ends at joining words.
 */
public final class Clauses {

	private static final Set<String> JOINING = Set.of("but", "then", "so", "because", "although", "though", "while",
			"when", "whereas", "until", "till", "if", "however", "otherwise", "before", "except", "apart");

	private static final Set<String> SUBJECTS = Set.of("he", "she", "it", "we", "i", "they", "his", "her", "the", "my",
			"there", "that", "no", "not", "did", "was", "is", "has", "had", "then", "seemed", "looked", "came", "got");

	private final int[] clause;

	private final int[] sentence;

	Clauses(Words words) {
		this.clause = new int[words.size()];
		this.sentence = new int[words.size()];
		int clauses = 0;
		int sentences = 0;
		for (int at = 1; at < words.size(); at++) {
			if (words.isSentenceBefore(at)) {
				sentences++;
			}
			if (words.isBreakBefore(at) || joins(words, at)) {
				clauses++;
			}
			this.clause[at] = clauses;
			this.sentence[at] = sentences;
		}
	}

	private static boolean joins(Words words, int at) {
		String form = words.form(at);
		if (JOINING.contains(form)) {
			return true;
		}
		return form.equals("and") && at + 1 < words.size() && SUBJECTS.contains(words.form(at + 1));
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

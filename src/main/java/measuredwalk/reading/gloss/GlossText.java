package measuredwalk.reading.gloss;

import java.util.List;
import java.util.function.Predicate;

/** Writes the English of a message, phrase by phrase. */
final class GlossText {

	private static final String DENIAL = " not";

	/** What is denied is not known, but must not be what stands before it. */
	private static final String SOMETHING = " know";

	private final Rules phrases;

	private final Predicate<String> english;

	private final StringBuilder text = new StringBuilder();

	private int known;

	private int unknown;

	GlossText(Rules phrases, Predicate<String> english) {
		this.phrases = phrases;
		this.english = english;
	}

	void add(List<Word> words, int from, int to) {
		int at = from;
		while (at < to) {
			Word word = words.get(at);
			Rules.Chosen chosen = (word.isMark() || word.kind() == Word.Kind.NAME) ? null
					: this.phrases.at(words.subList(0, to), at);
			if (chosen == null) {
				addAlone(word);
				at++;
			}
			else {
				this.known += chosen.fit().end() - at;
				addEnglish(chosen, words);
				at = chosen.fit().end();
			}
		}
	}

	private void addEnglish(Rules.Chosen chosen, List<Word> words) {
		String english = chosen.rule().english();
		if (!english.isEmpty()) {
			this.text.append(' ');
		}
		for (int at = 0; at < english.length(); at++) {
			char letter = english.charAt(at);
			if (letter == '$' && at + 1 < english.length()) {
				addKept(chosen.fit().kept(), english.charAt(at + 1) - '1', words);
				at++;
			}
			else {
				this.text.append(letter);
			}
		}
	}

	private void addKept(List<int[]> kept, int index, List<Word> words) {
		if (index < kept.size()) {
			add(words, kept.get(index)[0], kept.get(index)[1]);
		}
	}

	/**
	 * What the glossary does not know is left out, lest it be taken for an English slip.
	 */
	private void addAlone(Word word) {
		boolean left = word.kind() == Word.Kind.WORD && !this.english.test(word.typed()) && !isNameLike(word);
		if (word.kind() == Word.Kind.WORD) {
			this.unknown += left ? 1 : 0;
		}
		if (!left) {
			this.text.append(word.text());
		}
		else if (endsInDenial()) {
			this.text.append(SOMETHING);
		}
	}

	/** 'Rex cojea': a word with a capital that no list knows is somebody. */
	private static boolean isNameLike(Word word) {
		String bare = word.text().strip();
		return bare.length() > 2 && Character.isUpperCase(bare.charAt(0)) && Character.isLowerCase(bare.charAt(1));
	}

	private boolean endsInDenial() {
		int from = this.text.length() - DENIAL.length();
		return from >= 0 && this.text.indexOf(DENIAL, from) == from;
	}

	Gloss whole() {
		return new Gloss(this.text.toString().strip(), this.known, this.unknown);
	}

}

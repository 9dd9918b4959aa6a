package measuredwalk.reading.gloss;

import java.util.Set;

/**
 * One place of a glossary phrase.
 *
 * @param kind what may stand there
 * @param words which words, without accents unless they are told apart by them; empty for
 * any
 * @param most how many words at most
 */
record Piece(Kind kind, Set<String> words, int most) {

	/** What may stand in a place. */
	enum Kind {

		/** Any of some words. */
		ONE_OF,
		/**
		 * One word with its accents, where these tell it from another: 'sí' is not 'si'.
		 */
		ACCENTED,
		/** A number, kept. */
		FIGURE,
		/** A whole number below 60, kept: the minutes of an hour. */
		MINUTE,
		/** Some words between, kept and glossed by themselves. */
		BETWEEN,
		/** The beginning or the end of a clause. */
		EDGE

	}

	static final Piece EDGE = new Piece(Kind.EDGE, Set.of(), 0);

	static final Piece FIGURE = new Piece(Kind.FIGURE, Set.of(), 1);

	static final Piece MINUTE = new Piece(Kind.MINUTE, Set.of(), 1);

	static Piece oneOf(Set<String> words) {
		return new Piece(Kind.ONE_OF, Set.copyOf(words), 1);
	}

	static Piece accented(String word) {
		return new Piece(Kind.ACCENTED, Set.of(word), 1);
	}

	static Piece between(int most, Set<String> words) {
		return new Piece(Kind.BETWEEN, Set.copyOf(words), most);
	}

	boolean isKept() {
		return this.kind == Kind.FIGURE || this.kind == Kind.MINUTE || this.kind == Kind.BETWEEN;
	}

	boolean isOwnWord() {
		return this.kind != Kind.EDGE && this.kind != Kind.BETWEEN;
	}

	boolean fits(Word word) {
		return switch (this.kind) {
			case ONE_OF -> this.words.contains(word.plain());
			case ACCENTED -> this.words.contains(word.typed());
			case FIGURE -> word.kind() == Word.Kind.NUMBER;
			case MINUTE -> word.kind() == Word.Kind.NUMBER && isMinute(word.plain());
			case BETWEEN ->
				word.kind() == Word.Kind.WORD && (this.words.isEmpty() || this.words.contains(word.plain()));
			case EDGE -> false;
		};
	}

	private static boolean isMinute(String figures) {
		return figures.length() <= 2 && figures.chars().allMatch(Character::isDigit) && figures.charAt(0) < '6';
	}

}

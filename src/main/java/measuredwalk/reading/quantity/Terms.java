package measuredwalk.reading.quantity;

import java.util.List;

import measuredwalk.reading.Token;
import org.jspecify.annotations.Nullable;

/** The tokens of one text with what each may mean. Any index may be asked for. */
final class Terms {

	private final List<Token> tokens;

	private final Term[] terms;

	Terms(List<Token> tokens) {
		this.tokens = tokens;
		this.terms = Lexicon.termsOf(tokens);
		for (int at = 1; at < this.terms.length; at++) {
			if (isPronounOne(at)) {
				this.terms[at] = Term.NONE;
			}
		}
	}

	/** 'the second one fifteen minutes' is no 115. */
	private boolean isPronounOne(int at) {
		if (!is(at, "one") || !cue(at - 1, Cue.POINTING)) {
			return false;
		}
		return switch (numeral(at + 1)) {
			case DIGIT, TEEN, TENS, FIGURES -> true;
			default -> false;
		};
	}

	int size() {
		return this.terms.length;
	}

	Term term(int at) {
		return at >= 0 && at < this.terms.length ? this.terms[at] : Term.NONE;
	}

	Numeral numeral(int at) {
		return term(at).numeral();
	}

	@Nullable Unit unit(int at) {
		return term(at).unit();
	}

	boolean cue(int at, Cue cue) {
		return term(at).has(cue);
	}

	String word(int at) {
		return at >= 0 && at < this.terms.length ? this.tokens.get(at).word() : "";
	}

	boolean is(int at, String word) {
		return word(at).equals(word);
	}

	/** Whether it is a number in figures. */
	boolean isFigures(int at) {
		return numeral(at) == Numeral.FIGURES;
	}

	/** Whether it is joined to the token before, straight or by a compound's hyphen. */
	boolean joined(int at) {
		return at > 0 && at < this.terms.length && this.tokens.get(at).joined();
	}

	/** Whether not even a hyphen stands between it and the token before. */
	boolean glued(int at) {
		return joined(at) && this.tokens.get(at).start() == this.tokens.get(at - 1).end();
	}

	Token.@Nullable Kind kind(int at) {
		return at >= 0 && at < this.terms.length ? this.tokens.get(at).kind() : null;
	}

	Span span(int first, int end) {
		return new Span(first, end - 1, this.tokens.get(first).start(), this.tokens.get(end - 1).end());
	}

}

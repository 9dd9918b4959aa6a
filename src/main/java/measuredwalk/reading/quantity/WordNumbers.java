package measuredwalk.reading.quantity;

import org.jspecify.annotations.Nullable;

/**
 * Reads whole numbers in words, also with figures in front: 'twenty-five', 'a hundred and
 * five', '3 hundred and 21', 'two thousand'. One pass, never going back.
 */
final class WordNumbers {

	private final Terms terms;

	private int at;

	/** What comes before the last 'and', already times its hundred. */
	private double headBeforeAnd;

	private double thousands;

	private double group;

	/** The group before its tens: the three of 'three twenty-firsts'. */
	private double groupBeforeTens;

	private Numeral last = Numeral.NONE;

	private boolean afterAnd;

	private WordNumbers(Terms terms, int start) {
		this.terms = terms;

		this.at = start;
	}

	/** The number at that place, together with a fraction that it counts, or null. */
	static @Nullable NumberPhrase at(Terms terms, int start) {
		WordNumbers number = new WordNumbers(terms, start);
		number.readAll();
		if (number.at == start) {
			return null;
		}
		NumberPhrase parts = number.parts();
		return parts != null ? parts : number.whole();
	}

	private void readAll() {
		NumberPhrase figures = Figures.at(this.terms, this.at);
		if (figures != null) {
			this.group = figures.value();
			this.at = figures.end();
			this.last = Numeral.FIGURES;
		}
		while (readOne()) {
			this.at++;
		}
	}

	private boolean readOne() {
		Term term = this.terms.term(this.at);
		return switch (term.numeral()) {
			case ZERO -> this.last == Numeral.NONE && !this.terms.is(this.at, "oh") && take(term);
			case DIGIT -> (this.last == Numeral.TENS || mayBegin()) && take(term);
			case TEEN -> mayBegin() && take(term);
			case TENS -> (mayBegin() || countsTens()) && takeTens(term);
			case HUNDRED -> this.group < 100 && this.last != Numeral.HUNDRED && multiply(100, Numeral.HUNDRED);
			case SCALE -> this.last != Numeral.SCALE && multiplyAll(term.value());
			default -> isInnerAnd() || isSpacedHyphen();
		};
	}

	private boolean mayBegin() {
		return this.last == Numeral.NONE || this.last == Numeral.HUNDRED || this.last == Numeral.SCALE;
	}

	/** 'three twenty-firsts' are three of something. */
	private boolean countsTens() {
		return this.last == Numeral.DIGIT && this.terms.numeral(this.at + 1) == Numeral.PART
				&& this.terms.term(this.at + 1).value() < 10;
	}

	private boolean take(Term term) {
		this.group += term.value();
		this.last = term.numeral();
		return true;
	}

	private boolean takeTens(Term term) {
		this.groupBeforeTens = this.group;
		return take(term);
	}

	private boolean multiply(double factor, Numeral now) {
		this.group = Math.max(this.group, 1) * factor;
		this.last = now;
		return true;
	}

	private boolean multiplyAll(double factor) {
		this.thousands += Math.max(this.group, this.last == Numeral.NONE ? 1 : this.group) * factor;
		this.group = 0;
		this.last = Numeral.SCALE;
		return true;
	}

	/** The 'and' of 'a hundred and five', not the one of '3 hundred and 2 hundred'. */
	private boolean isInnerAnd() {
		boolean head = this.last == Numeral.HUNDRED || this.last == Numeral.SCALE;
		if (!head || this.afterAnd || !this.terms.is(this.at, "and")) {
			return false;
		}
		Numeral next = this.terms.numeral(this.at + 1);
		boolean small = next == Numeral.DIGIT || next == Numeral.TEEN || next == Numeral.TENS;
		int after = this.at + 2;
		boolean large = this.terms.numeral(after) == Numeral.HUNDRED || this.terms.numeral(after) == Numeral.SCALE;
		if (small && (!large || (this.last == Numeral.SCALE && this.terms.numeral(after) == Numeral.HUNDRED))) {
			this.headBeforeAnd = this.group;
			this.afterAnd = true;
			return true;
		}
		return this.terms.isFigures(this.at + 1) && !large && takeFiguresAfterAnd();
	}

	private boolean takeFiguresAfterAnd() {
		double tail = Figures.value(this.terms.word(this.at + 1));
		if (tail >= 100 || this.terms.word(this.at + 1).indexOf(':') >= 0) {
			return false;
		}
		this.group += tail;
		this.at++;
		this.last = Numeral.DIGIT;
		return true;
	}

	/** 'fifty - two', as some keyboards write it. */
	private boolean isSpacedHyphen() {
		Numeral next = this.terms.numeral(this.at + 1);
		return this.terms.is(this.at, "-") && ((this.last == Numeral.TENS && next == Numeral.DIGIT)
				|| (this.last == Numeral.DIGIT && next == Numeral.PART));
	}

	private NumberPhrase whole() {
		boolean figures = this.last == Numeral.FIGURES;
		return new NumberPhrase(this.thousands + this.group, this.at,
				figures ? NumberPhrase.Style.FIGURES : NumberPhrase.Style.WORDS, false);
	}

	/** The number as so many parts: 'two thirds', 'twenty-three fifths', or null. */
	private @Nullable NumberPhrase parts() {
		Term term = this.terms.term(this.at);
		double parts = term.value();
		if (this.thousands > 0 || (this.last == Numeral.FIGURES && this.group != Math.rint(this.group))) {
			return null;
		}
		if (term.numeral() == Numeral.ORDINAL) {
			return this.group == 1 && parts >= 3 ? fraction(1 / parts) : null;
		}
		if (term.numeral() != Numeral.PART || (this.group > 1 && this.terms.is(this.at, "half"))) {
			return null;
		}
		if (this.last == Numeral.TENS && this.groupBeforeTens > 0 && !this.afterAnd && parts < 10) {
			return fraction(this.groupBeforeTens / (this.group - this.groupBeforeTens + parts));
		}
		double tail = this.group - this.headBeforeAnd;
		boolean mixed = this.afterAnd && tail < parts;
		return parts == 1 ? null : fraction(mixed ? this.headBeforeAnd + tail / parts : this.group / parts);
	}

	private NumberPhrase fraction(double value) {
		return new NumberPhrase(value, this.at + 1, NumberPhrase.Style.FRACTION, false);
	}

}

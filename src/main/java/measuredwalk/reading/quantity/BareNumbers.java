package measuredwalk.reading.quantity;

import java.util.ArrayList;
import java.util.List;

import org.jspecify.annotations.Nullable;

/** Reads numbers without unit: plain ones, ages ('he is 12'), counts ('x2'), pronouns. */
final class BareNumbers {

	private static final int OLDEST = 25;

	private static final double MARATHON = 42_195;

	private final Terms terms;

	private final ClockTimes clock;

	BareNumbers(Terms terms, ClockTimes clock) {
		this.terms = terms;
		this.clock = clock;
	}

	@Nullable Match at(int start, Amounts.Found found) {
		int number = found.first().number().end() - 1;
		if (isPronoun(number) && found.amount().value() == 1) {
			return null;
		}
		Span span = this.terms.span(start, found.end());
		if (isAge(start, found)) {
			return Match.of(new Age(span, found.amount()));
		}
		if (isCount(start, found)) {
			int end = this.terms.cue(found.end(), Cue.TIMES) ? found.end() + 1 : found.end();
			return Match.of(new Count(this.terms.span(start, end), found.amount()));
		}
		if (isKilometres(found)) {
			Amount metres = found.amount();
			return Match.of(new Distance(span, metres, found.times()), new BareNumber(span, metres, found.times()));
		}
		Match pair = pair(start, found);
		if (pair != null) {
			return pair;
		}
		return new Match(new BareNumber(span, found.amount(), found.times()), others(start, span), null, found.end());
	}

	/** Other readings of a plain number: a time, and with k kilometres. */
	private List<Quantity> others(int start, Span span) {
		List<Quantity> others = new ArrayList<>();
		ClockPhrase phrase = Clocks.at(this.terms, start, false);
		boolean alone = start == 0 && span.lastToken() + 1 == this.terms.size();
		if (phrase != null && phrase.end() == span.lastToken() + 1 && (alone || !phrase.isBare())) {
			others.add(this.clock.time(phrase, start, start));
		}
		return others;
	}

	/** 'one' as in 'that one' or 'one of them'. */
	private boolean isPronoun(int at) {
		if (!this.terms.is(at, "one") && !this.terms.is(at, "single")) {
			return false;
		}
		boolean before = this.terms.cue(at - 1, Cue.DETERMINER) || this.terms.is(at - 1, "every");
		return before || this.terms.is(at + 1, "of") || this.terms.is(at + 1, "another");
	}

	private boolean isAge(int start, Amounts.Found found) {
		int before = start - 1;
		boolean aged = this.terms.is(before, "aged") || this.terms.is(before, "age") || this.terms.is(before, "turned")
				|| this.terms.is(before, "turns");
		int verb = this.terms.is(before, "nearly") || this.terms.is(before, "only") ? before - 1 : before;
		boolean is = (this.terms.is(verb, "is") && this.terms.cue(verb - 1, Cue.PRONOUN)) || this.terms.is(verb, "he's")
				|| this.terms.is(verb, "she's");
		return (aged || is) && found.amount().value() <= OLDEST && found.times() == 1 && found.amount().value() >= 1
				&& !this.terms.is(found.end(), "minutes");
	}

	/** A '5k' is a run or a walk, up to the length of a marathon. */
	private boolean isKilometres(Amounts.Found found) {
		int last = found.first().number().end() - 1;
		return this.terms.is(last, "k") && found.amount().value() <= MARATHON;
	}

	private boolean isCount(int start, Amounts.Found found) {
		if (isKiss(found.end())) {
			return false;
		}
		boolean before = this.terms.cue(start - 1, Cue.TIMES) && !this.terms.numeral(start - 2).isCardinal();
		return before || (this.terms.cue(found.end(), Cue.TIMES) && !this.terms.numeral(found.end() + 1).isCardinal());
	}

	/** The x at the end of '15 x'. */
	private boolean isKiss(int at) {
		return this.terms.is(at, "x") && !this.terms.glued(at)
				&& (at + 1 == this.terms.size() || this.terms.is(at + 1, "x") || this.terms.is(at + 1, "."));
	}

	/** 'one twenty two' is 122 or 1:22, 'eight forty' 8:40. */
	private @Nullable Match pair(int start, Amounts.Found found) {
		int second = found.end();
		boolean first = found.first().number().style() == NumberPhrase.Style.WORDS && second == start + 1
				&& this.terms.numeral(start) == Numeral.DIGIT && found.amount().value() < 10;
		int end = ClockMinutes.end(this.terms, second);
		boolean tens = this.terms.numeral(second) == Numeral.TENS || this.terms.numeral(second) == Numeral.TEEN;
		if (!first || !tens || end == second) {
			return null;
		}
		Span span = this.terms.span(start, end);
		double value = found.amount().value() * 100 + ClockMinutes.value(this.terms, second);
		return new Match(new BareNumber(span, Amount.of(value), 1), others(start, span), null, end);
	}

}

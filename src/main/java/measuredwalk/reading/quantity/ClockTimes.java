package measuredwalk.reading.quantity;

import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.temporal.ChronoUnit;

import measuredwalk.reading.Token;
import org.jspecify.annotations.Nullable;

/** Decides which words are a time of day, and which one of two times is meant. */
final class ClockTimes {

	private static final int MAX_HOUR_AFTER_AT = 12;

	private static final int MOST_WORDS_BEFORE = 4;

	private static final int MOST_WORDS_BETWEEN = 5;

	private final Terms terms;

	private final LocalDateTime now;

	ClockTimes(Terms terms, LocalDateTime now) {
		this.terms = terms;
		this.now = now;
	}

	/** A time that can be nothing else, or null. */
	@Nullable Match clearAt(int start) {
		int at = this.terms.cue(start, Cue.APPROXIMATE) ? start + 1 : start;
		ClockPhrase phrase = Clocks.at(this.terms, at, isLed(start) || isFalling(at));
		boolean length = phrase != null && phrase.end() == at + 1
				&& ColonFigures.hoursAndMinutes(this.terms, at) != null;
		return phrase != null && phrase.isClear() && !length ? withNumber(phrase, start, at) : null;
	}

	/** '0730' may also be a number. */
	private Match withNumber(ClockPhrase phrase, int start, int at) {
		ClockTime time = time(phrase, start, at);
		boolean figures = phrase.end() == at + 1 && Figures.isWholeFigures(this.terms.word(at));
		return figures ? Match.of(time, new BareNumber(time.span(), Amount.of(Figures.value(this.terms.word(at))), 1))
				: Match.of(time);
	}

	/** 'ten to three' is a time; 'five to ten' is likelier a range. */
	private boolean isFalling(int at) {
		double first = this.terms.term(at).value();
		int to = this.terms.numeral(at) == Numeral.TENS && this.terms.numeral(at + 1) == Numeral.DIGIT ? at + 2
				: at + 1;
		return this.terms.kind(at) == Token.Kind.WORD && first > this.terms.term(to + 1).value();
	}

	/** A number that stands where a time is likely: 'at 7', 'left 7.10', or null. */
	@Nullable Match likelyAt(int start) {
		int at = this.terms.cue(start, Cue.APPROXIMATE) ? start + 1 : start;
		ClockPhrase phrase = Clocks.at(this.terms, at, false);
		boolean listed = phrase != null && !phrase.isBare() && this.terms.is(phrase.end(), "-")
				&& !this.terms.glued(phrase.end() + 1);
		boolean told = phrase != null && (!phrase.isBare() || isFourFigures(at)) && isInWalk(start);
		return listed || told || isLed(start) ? likelyTime(start, at, phrase) : null;
	}

	private @Nullable Match likelyTime(int start, int at, @Nullable ClockPhrase phrase) {
		if (phrase == null || Units.at(this.terms, phrase.end()) != null
				|| (phrase.isBare() && !isBareHour(start, phrase) && !(isFourFigures(at) && isInWalk(start)))) {
			return null;
		}
		ClockTime time = time(phrase, start, at);
		NumberPhrase number = Numbers.at(this.terms, at);
		return number == null || number.isArticle() || number.end() > phrase.end() ? Match.of(time)
				: Match.of(time, new BareNumber(this.terms.span(at, number.end()), Amount.of(number.value()), 1));
	}

	/** '7h01' behind 'at' is a time, else a length of time. */
	@Nullable Match hourSignAt(int at) {
		boolean led = this.terms.isFigures(at) && this.terms.is(at + 1, "h") && this.terms.cue(at - 1, Cue.AT);
		return led ? likelyTime(at, at, Clocks.at(this.terms, at, false)) : null;
	}

	private boolean isBareHour(int start, ClockPhrase phrase) {
		boolean hour = phrase.hour() >= 1 && phrase.hour() <= MAX_HOUR_AFTER_AT && phrase.minute() == 0;
		int before = start - 1;
		boolean at = this.terms.cue(before, Cue.AT) || this.terms.is(before, "left") || this.terms.is(before, "back")
				|| ((this.terms.is(before, "by") || this.terms.is(before, "for"))
						&& this.terms.cue(before - 1, Cue.RETURN))
				|| ((this.terms.is(before, "after") || this.terms.is(before, "before")) && isInWalk(before));
		boolean joined = this.terms.cue(phrase.end(), Cue.RANGE) && this.terms.numeral(phrase.end() + 1).isCardinal();
		return hour && at && !joined && !this.terms.is(phrase.end(), "%") && !this.terms.cue(phrase.end(), Cue.TIMES);
	}

	/** '1610', as the twenty-four hours of a day are written without a mark. */
	private boolean isFourFigures(int at) {
		return this.terms.word(at).length() == 4 && Figures.isWholeFigures(this.terms.word(at));
	}

	/** 'out of the door 6.45': a word for going or coming back stands a little before. */
	private boolean isInWalk(int start) {
		for (int at = start - 1; at >= 0 && at > start - MOST_WORDS_BETWEEN; at--) {
			if (this.terms.cue(at, Cue.LEAVE) || this.terms.cue(at, Cue.RETURN)) {
				return true;
			}
			if (this.terms.kind(at) != Token.Kind.WORD) {
				return false;
			}
		}
		return false;
	}

	private boolean isLed(int start) {
		int before = start - 1;
		while (before > start - MOST_WORDS_BEFORE && this.terms.cue(before, Cue.APPROXIMATE)) {
			before--;
		}
		return this.terms.cue(before, Cue.LEAD) || this.terms.cue(before, Cue.LEAVE)
				|| this.terms.cue(before, Cue.RETURN) || this.terms.is(before, "was") || this.terms.is(before, "it's");
	}

	ClockTime time(ClockPhrase phrase, int start, int at) {
		boolean about = at > start || this.terms.cue(start - 1, Cue.APPROXIMATE);
		int end = phrase.end();
		Bounds.Found after = Bounds.after(this.terms, end);
		if (after != null && after.bound() == Bound.ABOUT) {
			about = true;
			end = after.end();
		}
		return new ClockTime(this.terms.span(start, end), phrase.time(), meant(phrase), phrase.known(), phrase.isBare(),
				about);
	}

	private LocalTime meant(ClockPhrase phrase) {
		LocalTime said = phrase.time();
		if (phrase.known()) {
			return said;
		}
		LocalTime other = phrase.otherHalf().time();
		return minutesSince(said) <= minutesSince(other) ? said : other;
	}

	private long minutesSince(LocalTime time) {
		long minutes = time.until(this.now.toLocalTime(), ChronoUnit.MINUTES);
		return minutes < 0 ? minutes + 1440 : minutes;
	}

	/** The same time in another half of the day than it was told in. */
	ClockTime of(ClockPhrase phrase, Span span, boolean known) {
		return new ClockTime(span, phrase.time(), known ? phrase.time() : meant(phrase), known, phrase.isBare(), false);
	}

}

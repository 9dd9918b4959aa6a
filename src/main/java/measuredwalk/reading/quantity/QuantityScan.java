package measuredwalk.reading.quantity;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;

import measuredwalk.reading.Token;
import org.jspecify.annotations.Nullable;

/** Goes through a text once and takes the longest likely quantity at each place. */
final class QuantityScan {

	private final Terms terms;

	private final LocalDateTime now;

	private final TimeRanges timeRanges;

	private final ClockTimes clock;

	private final BareNumbers bareNumbers;

	QuantityScan(List<Token> tokens, LocalDateTime now) {
		this.terms = new Terms(tokens);
		this.now = now;
		this.clock = new ClockTimes(this.terms, now);
		this.timeRanges = new TimeRanges(this.terms, this.clock);
		this.bareNumbers = new BareNumbers(this.terms, this.clock);
	}

	List<Match> matches() {
		List<Match> matches = new ArrayList<>();
		int at = 0;
		while (at < this.terms.size()) {
			boolean rate = isRate(at, matches);
			Match match = mayStart(at) && !rate ? at(at, matches) : null;
			if (match == null) {
				at++;
			}
			else {
				matches.add(match);
				at = match.end();
			}
		}
		return OutAndBack.joined(this.terms, this.clock,
				Sums.sharingUnits(this.terms, BoundPairs.merged(this.terms, matches)));
	}

	/** The 'a day' of '40 mg a day', 'twice a week'. */
	private boolean isRate(int at, List<Match> matches) {
		boolean behind = (!matches.isEmpty() && matches.get(matches.size() - 1).end() == at)
				|| this.terms.is(at - 1, "once") || this.terms.cue(at - 1, Cue.TIMES);
		Unit unit = this.terms.numeral(at) == Numeral.ARTICLE && behind ? this.terms.unit(at + 1) : null;
		return unit != null && unit.is(Dimension.TIME) && unit.size() >= 86_400;
	}

	/** Most words begin nothing: they are passed over at once. */
	private boolean mayStart(int at) {
		return this.terms.term(at).isKnown() || Starters.has(this.terms.word(at));
	}

	private @Nullable Match at(int at, List<Match> before) {
		Match date = Dates.at(this.terms, at);
		if (date != null) {
			return date;
		}
		Match range = this.timeRanges.at(at);
		if (range != null) {
			return range;
		}
		Match carried = carriedAt(at, before);
		if (carried != null) {
			return carried;
		}
		Match time = this.clock.clearAt(at);
		return time == null ? amountAt(at) : time;
	}

	/** The 'half past' behind a time that told the hour. */
	private @Nullable Match carriedAt(int at, List<Match> before) {
		ClockTime last = !before.isEmpty() && before.get(before.size() - 1).quantity() instanceof ClockTime time ? time
				: null;
		if (last == null && !this.terms.cue(at - 1, Cue.LEAVE) && !this.terms.cue(at - 2, Cue.LEAVE)) {
			return null;
		}
		ClockPhrase phrase = last == null ? HourCarry.before(this.terms, at, this.now)
				: HourCarry.at(this.terms, at, last.said().getHour(), last.said().getMinute(), last.halfOfDayKnown());
		return phrase == null ? null : Match.of(this.clock.time(phrase, at, at));
	}

	private @Nullable Match amountAt(int at) {
		Match ordinal = Ordinals.at(this.terms, at);
		Amounts.Found found = isInsideWord(at) ? null : Amounts.at(this.terms, at);
		Match hours = this.clock.hourSignAt(at);
		if (hours != null) {
			return hours;
		}
		if (found != null && found.unit() != null && (ordinal == null || found.end() > ordinal.end())) {
			return Kinds.match(this.terms, at, found);
		}
		Match time = this.clock.likelyAt(at);
		if (time != null) {
			return time;
		}
		if (ordinal != null && (found == null || found.first().number().style() != NumberPhrase.Style.FRACTION)) {
			return ordinal;
		}
		return found == null ? otherAt(at) : this.bareNumbers.at(at, found);
	}

	/** Figures behind a hyphen that is joined to a word are a name: 'SCP-173'. */
	private boolean isInsideWord(int at) {
		return this.terms.is(at - 1, "-") && this.terms.glued(at - 1) && this.terms.glued(at)
				&& this.terms.kind(at - 2) == Token.Kind.WORD && !this.terms.term(at - 2).isKnown();
	}

	private @Nullable Match otherAt(int at) {
		int seconds = ColonFigures.minutesAndSeconds(this.terms, at);
		if (seconds > 0) {
			return Match.of(new Duration(this.terms.span(at, at + 1), Amount.of(seconds), 1));
		}
		if (this.terms.is(at, "twice") || this.terms.is(at, "thrice")) {
			double times = this.terms.is(at, "twice") ? 2 : 3;
			return Match.of(new Count(this.terms.span(at, at + 1), Amount.of(times)));
		}
		Match whole = WholeDays.at(this.terms, at);
		if (whole != null) {
			return whole;
		}
		DayParts.Found part = DayParts.at(this.terms, at);
		return part == null ? null
				: Match.of(new DayPart(this.terms.span(at, part.next()), part.name(), part.start(), part.end()));
	}

}

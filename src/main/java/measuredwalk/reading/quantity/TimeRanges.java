package measuredwalk.reading.quantity;

import org.jspecify.annotations.Nullable;

/** Reads 'from ten past three till twenty to four', '5-6pm', 'from 10 am for 2 hours'. */
final class TimeRanges {

	private static final int DAY = 86_400;

	private static final int HALF_DAY = 43_200;

	private final Terms terms;

	private final ClockTimes clock;

	TimeRanges(Terms terms, ClockTimes clock) {
		this.terms = terms;
		this.clock = clock;
	}

	@Nullable Match at(int start) {
		boolean from = this.terms.is(start, "from");
		boolean between = this.terms.is(start, "between") || this.terms.is(start, "betwn");
		int at = from || between ? start + 1 : start;
		at = this.terms.cue(at, Cue.APPROXIMATE) || this.terms.is(at, "at") ? at + 1 : at;
		Match exact = range(start, at, true, from, between);
		return exact == null ? range(start, at, false, from, between) : exact;
	}

	private @Nullable Match range(int start, int at, boolean minutesTo, boolean from, boolean between) {
		ClockPhrase first = Clocks.at(this.terms, at, minutesTo);
		if (first == null) {
			return null;
		}
		int join = joinEnd(first.end(), between);
		if (join == first.end()) {
			return from && !first.isBare() ? lasting(start, at, first) : null;
		}
		join = this.terms.cue(join, Cue.APPROXIMATE) || this.terms.is(join, "at") ? join + 1 : join;
		ClockPhrase carried = HourCarry.after(first, this.terms, join);
		ClockPhrase last = carried == null ? Clocks.at(this.terms, join, true) : carried;
		if (last == null || Units.at(this.terms, last.end()) != null || !areTimes(first, last, from)) {
			return null;
		}
		return Match.of(between(first, last, start, at, join));
	}

	private int joinEnd(int told, boolean between) {
		int end = this.terms.is(told, "ish") ? told + 1 : told;
		boolean join = this.terms.is(end, "-") || (this.terms.cue(end, Cue.RANGE) && !this.terms.is(end, "or"))
				|| (between && this.terms.is(end, "and"));
		return join ? end + 1 : told;
	}

	/** Two numbers are times when one of them clearly is, or when 'from' says so. */
	private static boolean areTimes(ClockPhrase first, ClockPhrase last, boolean from) {
		if (first.isClear() || last.isClear()) {
			return true;
		}
		boolean quarterHours = first.isBare() && !last.isBare() && first.minute() == 0 && last.minute() % 5 == 0
				&& last.minute() > 0 && (last.hour() == first.hour() || last.hour() == first.hour() + 1);
		boolean likely = (!first.isBare() && !last.isBare()) || quarterHours;
		boolean hours = first.hour() <= 12 && last.hour() <= 12 && first.minute() == 0
				&& !(last.isBare() && last.minute() > 0);
		return (likely && (from || last.secondOfDay() > first.secondOfDay())) || (from && hours);
	}

	/** 'from 10 am for 3 hours 30 minutes'. */
	private @Nullable Match lasting(int start, int at, ClockPhrase first) {
		Measured length = this.terms.is(first.end(), "for") ? Measures.at(this.terms, first.end() + 1) : null;
		if (length == null || length.unit() == null || !length.unit().is(Dimension.TIME)) {
			return null;
		}
		ClockTime begin = this.clock.time(first, start, at);
		long seconds = Math.round(length.value());
		Span span = this.terms.span(start, length.end());
		ClockTime end = new ClockTime(span, begin.said().plusSeconds(seconds), begin.time().plusSeconds(seconds),
				begin.halfOfDayKnown(), false, begin.approximate());
		Quantity duration = new Duration(this.terms.span(first.end() + 1, length.end()), Amount.of(length.value()), 1);
		return Match.of(new TimeRange(span, begin, end, seconds), duration);
	}

	/**
	 * The range of two times, with the half of the day of either carried to the other.
	 */
	TimeRange between(ClockPhrase first, ClockPhrase last, int start, int firstAt, int lastAt) {
		ClockPhrase begin = first;
		ClockPhrase end = last;
		if (!first.known() && last.known() && first.hour() <= 12) {
			begin = nearerBefore(first, last);
		}
		else if (!last.known()) {
			end = nextAfter(first, last);
		}
		boolean known = first.known() || last.known();
		Span span = this.terms.span(start, last.end());
		ClockTime till = this.clock.of(end, this.terms.span(lastAt, last.end()), known);
		long seconds = Math.floorMod(end.secondOfDay() - begin.secondOfDay(), DAY);
		boolean shifted = !till.time().equals(till.said());
		ClockTime from = new ClockTime(this.terms.span(firstAt, first.end()), begin.time(),
				shifted ? begin.otherHalf().time() : begin.time(), known, first.isBare(), false);
		return new TimeRange(span, from, till, seconds);
	}

	private static ClockPhrase nearerBefore(ClockPhrase first, ClockPhrase last) {
		ClockPhrase other = first.otherHalf();
		int gap = Math.floorMod(last.secondOfDay() - first.secondOfDay(), DAY);
		int otherGap = Math.floorMod(last.secondOfDay() - other.secondOfDay(), DAY);
		return gap > 0 && (gap <= otherGap || otherGap == 0) ? first : other;
	}

	private static ClockPhrase nextAfter(ClockPhrase first, ClockPhrase last) {
		int gap = Math.floorMod(last.secondOfDay() - first.secondOfDay(), DAY);
		return gap > 0 && gap <= HALF_DAY ? last : last.otherHalf();
	}

}

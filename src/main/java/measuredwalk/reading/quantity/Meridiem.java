package measuredwalk.reading.quantity;

import org.jspecify.annotations.Nullable;

/** Reads am and pm in all their spellings: 'pm', 'p.m.', 'p m', 'p', "o'clock". */
final class Meridiem {

	private Meridiem() {
	}

	/** The time with what is told behind it about the half of the day. */
	static ClockPhrase extended(Terms terms, ClockPhrase time) {
		ClockPhrase told = time;
		int oclock = oclockEnd(terms, time.end());
		if (oclock > time.end()) {
			told = time.clear(oclock);
		}
		ClockPhrase half = withHalf(terms, told);
		ClockPhrase named = half == null ? told : half;
		DayParts.Found part = DayParts.adjunct(terms, named.end(), named.isClear());
		if (part == null || part.half() == HalfOfDay.NONE) {
			return named;
		}
		if (named.isBare() && isLikelierNumber(terms, time, named.end())) {
			return named;
		}
		return named.known() ? named.clear(part.next()) : named.in(part.half(), part.next());
	}

	/** In 'ten mins this morning and fifteen this evening' the fifteen is no time. */
	private static boolean isLikelierNumber(Terms terms, ClockPhrase time, int end) {
		int before = time.end() - 2;
		boolean led = terms.cue(before, Cue.LEAD) || terms.cue(before, Cue.RETURN) || terms.is(before, "it's");
		boolean named = terms.is(end, "in") || terms.is(end, "at");
		boolean twelve = (time.hour() == 12 && DayParts.timeAt(terms, end) != null) || terms.is(end, "midnight");
		boolean listed = terms.cue(before, Cue.AND) && !terms.is(before - 2, "between");
		return !led && !twelve && (!named || time.hour() > 12 || listed);
	}

	private static @Nullable ClockPhrase withHalf(Terms terms, ClockPhrase time) {
		int at = time.end();
		if ((terms.is(at, "am") || terms.is(at, "pm")) && !isOfNext(terms, time, at)) {
			return time.in(terms.is(at, "am") ? HalfOfDay.AM : HalfOfDay.PM, at + 1);
		}
		boolean am = terms.is(at, "a");
		if (!am && !terms.is(at, "p")) {
			return null;
		}
		int letter = terms.is(at + 1, ".") ? at + 2 : at + 1;
		if (terms.is(letter, "m")) {
			return time.in(am ? HalfOfDay.AM : HalfOfDay.PM, terms.is(letter + 1, ".") ? letter + 2 : letter + 1);
		}
		boolean alone = terms.glued(at) && letter == at + 1 && !terms.glued(letter);
		return alone ? time.in(am ? HalfOfDay.AM : HalfOfDay.PM, letter) : null;
	}

	/** The pm of 'am 15 pm 20': each stands before its own number. */
	private static boolean isOfNext(Terms terms, ClockPhrase time, int at) {
		boolean behindOther = terms.is(time.end() - 2, "am") || terms.is(time.end() - 2, "pm");
		return behindOther && !terms.glued(at) && terms.numeral(at + 1).isCardinal();
	}

	private static int oclockEnd(Terms terms, int at) {
		if (terms.is(at, "o'clock")) {
			return at + 1;
		}
		int clock = terms.is(at + 1, "'") ? at + 2 : at + 1;
		return terms.is(at, "o") && terms.is(clock, "clock") ? clock + 1 : at;
	}

}

package measuredwalk.reading.quantity;

import org.jspecify.annotations.Nullable;

/** Reads a time of day in any wording: 'ten past three', 'half nine', '7pm', 'noon'. */
final class Clocks {

	private Clocks() {
	}

	/**
	 * The time that begins there, or null.
	 * @param terms the text
	 * @param at where
	 * @param minutesTo whether '10 to 11' may mean ten minutes before eleven
	 */
	static @Nullable ClockPhrase at(Terms terms, int at, boolean minutesTo) {
		ClockPhrase named = DayParts.timeAt(terms, at);
		if (named != null) {
			return named;
		}
		ClockPhrase relative = pastOrTo(terms, at, minutesTo);
		if (relative != null) {
			return Meridiem.extended(terms, relative);
		}
		DayParts.Found before = DayParts.adjunct(terms, at, true);
		if (before != null && before.half() != HalfOfDay.NONE) {
			return behindPart(terms, before);
		}
		ClockPhrase number = ClockNumbers.at(terms, at);
		return number == null || Numbers.negativeSignEnd(terms, at - 1) == at ? null : Meridiem.extended(terms, number);
	}

	/** 'in the afternoon at 7', 'afternoon 7:00'. */
	private static @Nullable ClockPhrase behindPart(Terms terms, DayParts.Found part) {
		int at = part.next();
		at = terms.is(at, ",") ? at + 1 : at;
		boolean said = terms.cue(at, Cue.AT);
		at = said ? at + 1 : at;
		at = terms.cue(at, Cue.APPROXIMATE) ? at + 1 : at;
		ClockPhrase relative = pastOrTo(terms, at, true);
		ClockPhrase number = relative == null ? ClockNumbers.at(terms, at) : relative;
		if (number == null || (number.isBare() && (!said || terms.unit(number.end()) != null))) {
			return null;
		}
		ClockPhrase told = Meridiem.extended(terms, number);
		return told.known() ? told.clear(told.end()) : told.in(part.half(), told.end());
	}

	/** 'ten past three', 'a quarter to 8', 'half nine', '20 min past eight'. */
	private static @Nullable ClockPhrase pastOrTo(Terms terms, int start, boolean minutesTo) {
		int at = terms.is(start, "a") ? start + 1 : start;
		if (terms.is(at, "half") && at == start) {
			int past = terms.is(at + 1, "past") || terms.is(at + 1, "after") ? at + 2 : at + 1;
			return hourBehind(terms, past, 30, past == at + 1);
		}
		boolean quarter = terms.is(at, "quarter") || terms.is(at, "qtr");
		int minutes = quarter ? 15 : at == start ? minutesAt(terms, at) : -1;
		int end = quarter ? at + 1 : minutesEnd(terms, at);
		boolean unit = isMinuteWord(terms, end);
		int word = unit ? end + 1 : end;
		if (minutes < 1 || minutes > 59) {
			return null;
		}
		if (terms.is(word, "past") || ((quarter || unit) && terms.is(word, "after"))) {
			return hourBehind(terms, word + 1, minutes, false);
		}
		return isTo(terms, word, quarter || unit) && (quarter || (minutesTo && (unit || minutes % 5 == 0)))
				? hourBehind(terms, word + 1, -minutes, false) : null;
	}

	private static boolean isTo(Terms terms, int at, boolean sure) {
		return terms.is(at, "to") || (sure
				&& (terms.is(at, "before") || terms.is(at, "of") || terms.is(at, "til") || terms.is(at, "till")));
	}

	private static boolean isMinuteWord(Terms terms, int at) {
		Unit unit = terms.unit(at);
		return unit != null && unit.name().equals("minute") && unit.other() == null;
	}

	private static int minutesAt(Terms terms, int at) {
		if (terms.isFigures(at)) {
			return Figures.isWholeFigures(terms.word(at)) && terms.word(at).length() <= 2
					? (int) Figures.value(terms.word(at)) : -1;
		}
		Numeral numeral = terms.numeral(at);
		boolean word = numeral == Numeral.DIGIT || numeral == Numeral.TEEN || numeral == Numeral.TENS;
		return word ? ClockMinutes.value(terms, at) : -1;
	}

	private static int minutesEnd(Terms terms, int at) {
		return terms.numeral(at) == Numeral.TENS && terms.numeral(at + 1) == Numeral.DIGIT ? at + 2 : at + 1;
	}

	private static @Nullable ClockPhrase hourBehind(Terms terms, int at, int minutes, boolean british) {
		int hour = terms.isFigures(at)
				? Figures.isWholeFigures(terms.word(at)) && terms.word(at).length() <= 2
						? (int) Figures.value(terms.word(at)) : -1
				: terms.numeral(at) == Numeral.TENS ? -1 : ClockNumbers.hourWord(terms, at);
		ClockPhrase named = DayParts.timeAt(terms, at);
		if (named != null && !british) {
			return shifted(named, minutes, named.end());
		}
		boolean fits = hour >= (british ? 1 : 0) && hour <= 12 && isHourAlone(terms, at + 1)
				&& !(british && terms.glued(at));
		ClockPhrase base = fits ? ClockNumbers.phrase(hour, 0, 0, ClockPhrase.Strength.CLEAR, at + 1) : null;
		return base == null ? null : shifted(base, minutes, at + 1);
	}

	/** The hour is no amount: not the twelve of 'ten to twelve minutes'. */
	private static boolean isHourAlone(Terms terms, int at) {
		boolean half = terms.is(at, "p") || terms.is(at, "a") || terms.is(at, "o");
		if (half || terms.is(at, "s")) {
			return half;
		}
		return Units.at(terms, at) == null && !terms.numeral(at).isCardinal()
				&& (Bounds.after(terms, at) == null || Units.at(terms, at + 1) == null)
				&& !(terms.cue(at, Cue.AND) && MixedNumbers.partAfterAnd(terms, at) != null);
	}

	private static ClockPhrase shifted(ClockPhrase hour, int minutes, int end) {
		int total = (hour.hour() * 60 + minutes + 1440) % 1440;
		int newHour = total / 60;
		boolean beforeOne = minutes < 0 && hour.hour() == 1;
		int told = beforeOne ? 12 : newHour;
		return new ClockPhrase(told, total % 60, 0, hour.known(), ClockPhrase.Strength.CLEAR, end);
	}

}

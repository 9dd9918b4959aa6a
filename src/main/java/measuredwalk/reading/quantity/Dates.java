package measuredwalk.reading.quantity;

import org.jspecify.annotations.Nullable;

/** Reads days of the calendar, so that their numbers are not taken for minutes. */
final class Dates {

	private Dates() {
	}

	static @Nullable Match at(Terms terms, int at) {
		if (terms.isFigures(at)) {
			Match written = figures(terms, at);
			return written == null ? dayAndMonth(terms, at, at) : written;
		}
		if (terms.cue(at, Cue.MONTH)) {
			return monthAndDay(terms, at);
		}
		int day = terms.is(at, "the") ? at + 1 : at;
		return OrdinalNumbers.end(terms, day) > day ? dayAndMonth(terms, day, day) : null;
	}

	/** 4/5/2026, 4.5.26, 2026-03-14, 1995-01. */
	private static @Nullable Match figures(Terms terms, int at) {
		String mark = terms.word(at + 1);
		boolean separator = mark.equals("/") || mark.equals("-") || mark.equals(".");
		if (!separator || !terms.glued(at + 1) || !terms.glued(at + 2) || !isWhole(terms, at + 2)
				|| !isWhole(terms, at)) {
			return null;
		}
		boolean three = terms.is(at + 3, mark) && terms.glued(at + 3) && terms.glued(at + 4) && isWhole(terms, at + 4);
		if (three) {
			return isShort(terms, at + 2) && !terms.is(at + 5, mark) && (isShort(terms, at) || isYear(terms, at))
					? Match.of(new DateMention(terms.span(at, at + 5), null, null, null)) : null;
		}
		boolean yearAndMonth = mark.equals("-") && isYear(terms, at) && terms.word(at + 2).length() == 2
				&& Figures.value(terms.word(at + 2)) <= 12;
		return yearAndMonth
				? Match.of(new DateMention(terms.span(at, at + 3), null, number(terms, at + 2), number(terms, at)))
				: null;
	}

	/** 4 May, 4th of May, the 4th of May 2026. */
	private static @Nullable Match dayAndMonth(Terms terms, int start, int at) {
		int day = day(terms, at);
		int end = OrdinalNumbers.end(terms, at);
		end = end == at ? at + 1 : end;
		int month = terms.is(end, "of") ? end + 1 : end;
		if (day < 1 || !isMonth(terms, month, month > end || terms.is(month, "march") || endsIn(terms, month, "may"))) {
			return null;
		}
		return dated(terms, start, day, terms.term(month).month(), month + 1);
	}

	/** May 4th, March 3. */
	private static @Nullable Match monthAndDay(Terms terms, int at) {
		int day = day(terms, at + 1);
		int end = OrdinalNumbers.end(terms, at + 1);
		boolean ordinal = end > at + 1;
		if (day < 1 || (!ordinal && (!isMonth(terms, at, false) || !isFree(terms, at + 2)))) {
			return null;
		}
		return dated(terms, at, day, terms.term(at).month(), ordinal ? end : at + 2);
	}

	private static Match dated(Terms terms, int start, int day, int month, int end) {
		int year = terms.is(end, ",") ? end + 1 : end;
		return isYear(terms, year)
				? Match.of(new DateMention(terms.span(start, year + 1), day, month, number(terms, year)))
				: Match.of(new DateMention(terms.span(start, end), day, month, null));
	}

	/** 'may' and 'mar' are months only where nothing else fits. */
	private static boolean isMonth(Terms terms, int at, boolean behindOf) {
		return terms.cue(at, Cue.MONTH) && (behindOf || (!terms.is(at, "may") && !terms.is(at, "march")));
	}

	/** 'on 3 May.' names a month, '3 may be enough' does not. */
	private static boolean endsIn(Terms terms, int at, String month) {
		String next = terms.word(at + 1);
		return terms.is(at, month) && (next.isEmpty() || !Character.isLetter(next.charAt(0)));
	}

	private static boolean isFree(Terms terms, int at) {
		return Units.at(terms, at) == null && !terms.cue(at, Cue.RANGE);
	}

	private static int day(Terms terms, int at) {
		int ordinal = OrdinalNumbers.end(terms, at) > at ? (int) OrdinalNumbers.value(terms, at) : 0;
		int day = ordinal > 0 ? ordinal : isShort(terms, at) ? number(terms, at) : 0;
		return day <= 31 ? day : 0;
	}

	private static boolean isWhole(Terms terms, int at) {
		return terms.isFigures(at) && Figures.isWholeFigures(terms.word(at));
	}

	private static boolean isShort(Terms terms, int at) {
		return isWhole(terms, at) && terms.word(at).length() <= 2;
	}

	private static boolean isYear(Terms terms, int at) {
		return isWhole(terms, at) && terms.word(at).length() == 4 && number(terms, at) >= 1900
				&& number(terms, at) < 2100;
	}

	private static int number(Terms terms, int at) {
		return (int) Figures.value(terms.word(at));
	}

}

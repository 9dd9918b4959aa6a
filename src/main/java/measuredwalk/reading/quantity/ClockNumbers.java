package measuredwalk.reading.quantity;

import org.jspecify.annotations.Nullable;

/** Reads times written as numbers: 7, 7.10, 7:10:30, 1830, 7h01, 'eight forty'. */
final class ClockNumbers {

	private ClockNumbers() {
	}

	/** The time, as a plain number or more, or null when the number is none. */
	static @Nullable ClockPhrase at(Terms terms, int at) {
		if (terms.isFigures(at)) {
			return figures(terms, at);
		}
		int hour = hourWord(terms, at);
		if (hour < 0) {
			return null;
		}
		int hourEnd = at + (terms.numeral(at) == Numeral.TENS && hour > 20 ? 2 : 1);
		int minuteEnd = ClockMinutes.end(terms, hourEnd);
		return minuteEnd > hourEnd
				? phrase(hour, ClockMinutes.value(terms, hourEnd), 0, ClockPhrase.Strength.LIKELY, minuteEnd)
				: phrase(hour, 0, 0, ClockPhrase.Strength.BARE, hourEnd);
	}

	/** The hour from 0 to 23 that a word names, or -1. */
	static int hourWord(Terms terms, int at) {
		Term term = terms.term(at);
		return switch (term.numeral()) {
			case DIGIT, TEEN -> terms.is(at, "single") ? -1 : (int) term.value();
			case TENS ->
				term.value() != 20 ? -1 : terms.numeral(at + 1) == Numeral.DIGIT && terms.term(at + 1).value() <= 3
						? 20 + (int) terms.term(at + 1).value() : 20;
			default -> -1;
		};
	}

	private static @Nullable ClockPhrase figures(Terms terms, int at) {
		String word = terms.word(at);
		int colon = word.indexOf(':');
		if (colon > 0) {
			return colonTime(word, colon, terms.is(at + 1, "h") && terms.glued(at + 1) ? at + 2 : at + 1);
		}
		int point = word.indexOf('.');
		if (point > 0) {
			return point <= 2 && word.length() - point == 3 ? phrase(number(word, 0, point),
					number(word, point + 1, word.length()), 0, ClockPhrase.Strength.LIKELY, at + 1) : null;
		}
		if (!Figures.isWholeFigures(word) || word.length() > 4) {
			return null;
		}
		return word.length() > 2 ? military(terms, at, word) : shortFigures(terms, at, word);
	}

	private static @Nullable ClockPhrase colonTime(String word, int colon, int end) {
		int second = word.indexOf(':', colon + 1);
		int minute = number(word, colon + 1, second < 0 ? word.length() : second);
		return phrase(number(word, 0, colon), minute, second < 0 ? 0 : number(word, second + 1, word.length()),
				ClockPhrase.Strength.CLEAR, end);
	}

	/** 340 before pm, 0600, 1830 hrs: clear only with a zero in front or hours behind. */
	private static @Nullable ClockPhrase military(Terms terms, int at, String word) {
		int split = word.length() - 2;
		boolean hours = terms.is(at + 1, "hrs") || terms.is(at + 1, "hours") || terms.is(at + 1, "h");
		boolean clear = word.length() == 4 && (word.charAt(0) == '0' || hours);
		return phrase(number(word, 0, split), number(word, split, word.length()), 0,
				clear ? ClockPhrase.Strength.CLEAR : ClockPhrase.Strength.BARE, at + (clear && hours ? 2 : 1));
	}

	private static @Nullable ClockPhrase shortFigures(Terms terms, int at, String word) {
		int hour = number(word, 0, word.length());
		boolean hourSign = terms.is(at + 1, "h") && terms.glued(at + 1);
		if (hourSign && terms.glued(at + 2) && terms.isFigures(at + 2) && terms.word(at + 2).length() == 2) {
			return phrase(hour, number(terms.word(at + 2), 0, 2), 0, ClockPhrase.Strength.LIKELY, at + 3);
		}
		boolean minutes = terms.isFigures(at + 1) && terms.word(at + 1).length() == 2
				&& Figures.isWholeFigures(terms.word(at + 1));
		if (minutes && terms.unit(at + 2) == null) {
			ClockPhrase pair = phrase(hour, number(terms.word(at + 1), 0, 2), 0, ClockPhrase.Strength.BARE, at + 2);
			return pair != null && followedByHalf(terms, at + 2) ? pair
					: phrase(hour, 0, 0, ClockPhrase.Strength.BARE, at + 1);
		}
		return phrase(hour, 0, 0, ClockPhrase.Strength.BARE, at + 1);
	}

	private static boolean followedByHalf(Terms terms, int at) {
		return terms.is(at, "am") || terms.is(at, "pm") || terms.is(at, "a") || terms.is(at, "p");
	}

	private static int number(String word, int from, int end) {
		int value = 0;
		for (int at = from; at < end; at++) {
			value = value * 10 + (word.charAt(at) - '0');
		}
		return value;
	}

	static @Nullable ClockPhrase phrase(int hour, int minute, int second, ClockPhrase.Strength strength, int end) {
		if (hour > 23 || minute > 59 || second > 59) {
			return hour == 24 && minute == 0 ? new ClockPhrase(0, 0, 0, true, strength, end) : null;
		}
		return new ClockPhrase(hour, minute, second, hour > 12 || hour == 0, strength, end);
	}

}

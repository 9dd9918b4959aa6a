package measuredwalk.reading.quantity;

import java.time.LocalDateTime;

import org.jspecify.annotations.Nullable;

/**
 * Reads times that leave out their hour, which was told before: 'from 3 till half past',
 * 'left at quarter to six, home at ten past'.
 */
final class HourCarry {

	private static final int HOUR_MINUTES = 60;

	private static final int DAY_MINUTES = 1440;

	private HourCarry() {
	}

	/** The first such time after another one, or null when none begins there. */
	static @Nullable ClockPhrase at(Terms terms, int at, int hour, int minute, boolean known) {
		int start = terms.is(at, "a") ? at + 1 : at;
		int minutes = minutesAt(terms, start);
		int end = terms.numeral(start) == Numeral.TENS && terms.numeral(start + 1) == Numeral.DIGIT ? start + 2
				: start + 1;
		end = terms.unit(end) != null && terms.is(end, "minutes") ? end + 1 : end;
		boolean past = terms.is(end, "past");
		if (minutes < 1 || minutes >= HOUR_MINUTES || !(past || terms.is(end, "to")) || goesOn(terms, end + 1, past)) {
			return null;
		}
		int told = hour * HOUR_MINUTES + minute;
		int ofHour = past ? minutes : HOUR_MINUTES - minutes;
		int time = hour * HOUR_MINUTES + ofHour;
		time = time > told ? time : time + HOUR_MINUTES;
		int wrapped = time % DAY_MINUTES;
		return new ClockPhrase(wrapped / HOUR_MINUTES, wrapped % HOUR_MINUTES, 0, known, ClockPhrase.Strength.CLEAR,
				end + 1);
	}

	/**
	 * 'set off ten past': no hour was told at all, so it was the last time before now.
	 */
	static @Nullable ClockPhrase before(Terms terms, int at, LocalDateTime now) {
		LocalDateTime hourAgo = now.minusHours(1);
		return at(terms, at, hourAgo.getHour(), hourAgo.getMinute(), true);
	}

	static @Nullable ClockPhrase after(ClockPhrase first, Terms terms, int at) {
		return at(terms, at, first.hour(), first.minute(), first.known());
	}

	/** 'ten past the gate' is a place; 'ten to' needs an end of the words. */
	private static boolean goesOn(Terms terms, int at, boolean past) {
		boolean ends = terms.kind(at) == null || terms.is(at, ".") || terms.is(at, ",") || terms.is(at, ";")
				|| terms.is(at, "!") || terms.is(at, "?") || terms.is(at, ")");
		return past ? terms.numeral(at) != Numeral.NONE || terms.is(at, "the") || terms.is(at, "noon") : !ends;
	}

	private static int minutesAt(Terms terms, int at) {
		if (terms.is(at, "half")) {
			return HOUR_MINUTES / 2;
		}
		if (terms.is(at, "quarter") || terms.is(at, "qtr")) {
			return HOUR_MINUTES / 4;
		}
		if (terms.isFigures(at)) {
			boolean whole = Figures.isWholeFigures(terms.word(at)) && terms.word(at).length() <= 2;
			return whole ? (int) Figures.value(terms.word(at)) : -1;
		}
		Numeral numeral = terms.numeral(at);
		boolean word = numeral == Numeral.DIGIT || numeral == Numeral.TEEN || numeral == Numeral.TENS;
		return word ? ClockMinutes.value(terms, at) : -1;
	}

}

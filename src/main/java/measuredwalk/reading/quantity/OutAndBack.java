package measuredwalk.reading.quantity;

import java.util.ArrayList;
import java.util.List;

import org.jspecify.annotations.Nullable;

/**
 * Makes one range of two times of a walk: 'left 7.10 back 7.35', 'out at 3, home by 4'.
 */
final class OutAndBack {

	private static final int MOST_WORDS_BETWEEN = 9;

	/** 'it was ten to three when we left'. */
	private static final int MOST_WORDS_AFTER = 3;

	private static final int MOST_WORDS_BEFORE = 5;

	private OutAndBack() {
	}

	static List<Match> joined(Terms terms, ClockTimes clock, List<Match> matches) {
		List<Match> joined = new ArrayList<>(matches.size());
		for (Match match : matches) {
			Match before = joined.isEmpty() ? null : joined.get(joined.size() - 1);
			Match both = before == null ? null : both(terms, clock, before, match);
			if (both == null) {
				joined.add(match);
			}
			else {
				joined.set(joined.size() - 1, both);
			}
		}
		return joined;
	}

	private static @Nullable Match both(Terms terms, ClockTimes clock, Match one, Match other) {
		if (!(one.quantity() instanceof ClockTime first) || !(other.quantity() instanceof ClockTime second)
				|| second.span().firstToken() - one.end() > MOST_WORDS_BETWEEN) {
			return null;
		}
		if (isLeaving(terms, 0, first, one.end()) && isReturn(terms, one.end(), second, other.end())) {
			return range(terms, clock, first, one.end(), second, other.end());
		}
		boolean reversed = hasCue(terms, Cue.RETURN, first.span().firstToken() - MOST_WORDS_BEFORE,
				first.span().firstToken()) && hasCue(terms, Cue.LEAVE, one.end(), second.span().firstToken());
		return reversed ? range(terms, clock, second, other.end(), first, one.end()) : null;
	}

	/** 'left the house at 7.55', '18:00 out'. */
	private static boolean isLeaving(Terms terms, int from, ClockTime time, int end) {
		int at = time.span().firstToken();
		return hasCue(terms, Cue.LEAVE, Math.max(from, at - MOST_WORDS_BEFORE), at)
				|| hasCue(terms, Cue.LEAVE, end, end + MOST_WORDS_AFTER);
	}

	/** 'back at 8.20', '18:20 in'. */
	private static boolean isReturn(Terms terms, int from, ClockTime time, int end) {
		return hasCue(terms, Cue.RETURN, from, time.span().firstToken()) || terms.cue(end, Cue.RETURN);
	}

	private static Match range(Terms terms, ClockTimes clock, ClockTime from, int fromEnd, ClockTime till,
			int tillEnd) {
		int begin = from.span().firstToken();
		int end = till.span().firstToken();
		return Match.of(new TimeRanges(terms, clock).between(phrase(from, fromEnd), phrase(till, tillEnd),
				Math.min(begin, end), begin, end));
	}

	private static ClockPhrase phrase(ClockTime time, int end) {
		ClockPhrase.Strength strength = time.bare() ? ClockPhrase.Strength.BARE : ClockPhrase.Strength.CLEAR;
		return new ClockPhrase(time.said().getHour(), time.said().getMinute(), time.said().getSecond(),
				time.halfOfDayKnown(), strength, end);
	}

	private static boolean hasCue(Terms terms, Cue cue, int from, int end) {
		for (int at = from; at < end; at++) {
			if (terms.cue(at, cue)) {
				return true;
			}
		}
		return false;
	}

}

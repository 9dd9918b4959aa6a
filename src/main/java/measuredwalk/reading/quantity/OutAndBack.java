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

	/** 'we set out a little after the rain stopped, at ten to five': told at length. */
	private static final int MOST_WORDS_BEFORE_STORY = 10;

	private OutAndBack() {
	}

	static List<Match> joined(Terms terms, ClockTimes clock, List<Match> matches) {
		List<Match> joined = new ArrayList<>(matches.size());
		for (Match match : matches) {
			int first = lastTime(joined);
			Match both = first < 0 ? null : both(terms, clock, joined.get(first), match);
			if (both == null) {
				joined.add(match);
			}
			else {
				joined.subList(first, joined.size()).clear();
				joined.add(both);
			}
		}
		return joined;
	}

	/** Index of the last time of day, with nothing but plain numbers behind it, or -1. */
	private static int lastTime(List<Match> matches) {
		int at = matches.size() - 1;
		while (at >= 0 && matches.get(at).quantity() instanceof BareNumber) {
			at--;
		}
		return at >= 0 && matches.get(at).quantity() instanceof ClockTime ? at : -1;
	}

	private static @Nullable Match both(Terms terms, ClockTimes clock, Match one, Match other) {
		if (!(one.quantity() instanceof ClockTime first) || !(other.quantity() instanceof ClockTime second)) {
			return null;
		}
		int back = second.span().firstToken();
		if (back - one.end() > MOST_WORDS_BETWEEN) {
			int out = first.span().firstToken();
			boolean story = hasCue(terms, Cue.LEAVE, out - MOST_WORDS_BEFORE_STORY, out)
					&& hasCue(terms, Cue.RETURN, back - MOST_WORDS_BEFORE, back);
			return story ? range(terms, clock, first, one.end(), second, other.end()) : null;
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

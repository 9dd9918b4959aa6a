package measuredwalk.reading.quantity;

import java.util.ArrayList;
import java.util.List;

import org.jspecify.annotations.Nullable;

/**
 * Makes one range of two times of a walk: 'left 7.10 back 7.35', 'out at 3, home by 4'.
 */
final class OutAndBack {

	private static final int MOST_WORDS_BETWEEN = 8;

	private static final int MOST_WORDS_BEFORE = 3;

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
		if (!(one.quantity() instanceof ClockTime from) || !(other.quantity() instanceof ClockTime till)) {
			return null;
		}
		int gap = till.span().firstToken() - one.end();
		boolean told = gap <= MOST_WORDS_BETWEEN && hasCue(terms, Cue.RETURN, one.end(), till.span().firstToken())
				&& hasCue(terms, Cue.LEAVE, from.span().firstToken() - MOST_WORDS_BEFORE, from.span().firstToken());
		if (!told) {
			return null;
		}
		TimeRange range = new TimeRanges(terms, clock).between(phrase(from, one.end()), phrase(till, other.end()),
				from.span().firstToken(), from.span().firstToken(), till.span().firstToken());
		return Match.of(range);
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

package measuredwalk.care;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalTime;
import java.util.EnumSet;
import java.util.Objects;
import java.util.Set;

import measuredwalk.journal.WalkEntry;
import measuredwalk.journal.WalkFacts;
import measuredwalk.signs.LoadKind;

/**
 * Whether two people tell of one walk. It may be one when it was on the same day, and the
 * times overlap or, where a beginning was not told, both told within two hours; it
 * plainly is one when the minutes are alike as well, to a fifth. The figures are common
 * practice, no source.
 */
final class TwinWalk {

	private static final Duration TOLD_WITHIN = Duration.ofHours(2);

	private static final double ALIKE = 0.2;

	private TwinWalk() {
	}

	static boolean plainly(WalkEntry told, WalkFacts facts, Instant at) {
		return sameTime(told, facts, at) && alike(told.facts(), facts);
	}

	static boolean perhaps(WalkEntry told, WalkFacts facts, Instant at) {
		return sameTime(told, facts, at) && !alike(told.facts(), facts);
	}

	private static boolean alike(WalkFacts one, WalkFacts other) {
		if (one.minutes() == null || other.minutes() == null) {
			return false;
		}
		double longer = Math.max(one.minutes(), other.minutes());
		return Math.abs(one.minutes() - other.minutes()) <= ALIKE * longer;
	}

	private static boolean sameTime(WalkEntry told, WalkFacts facts, Instant at) {
		if (!told.facts().date().equals(facts.date())) {
			return false;
		}
		LocalTime one = told.facts().start();
		LocalTime other = facts.start();
		if (one != null && other != null) {
			return one.isBefore(end(facts, other)) && other.isBefore(end(told.facts(), one));
		}
		return Duration.between(told.reportedAt(), at).abs().compareTo(TOLD_WITHIN) <= 0;
	}

	/** A walk that goes on past midnight ends with the day here. */
	private static LocalTime end(WalkFacts facts, LocalTime start) {
		long minutes = Math.max(1, Math.round(Objects.requireNonNullElse(facts.minutes(), 1.0)));
		LocalTime end = start.plusMinutes(minutes);
		return end.isBefore(start) ? LocalTime.MAX : end;
	}

	/** One walk out of two tellings: the first one's figures, and all that both saw. */
	static WalkFacts together(WalkFacts first, WalkFacts second) {
		WalkFacts base = (first.minutes() != null) ? first : second;
		return new WalkFacts(first.date(), (first.start() != null) ? first.start() : second.start(), base.minutes(),
				base.minutesLow(), base.minutesHigh(),
				(first.distanceMetres() != null) ? first.distanceMetres() : second.distanceMetres(),
				base.minutesEstimated(), (second.overall() != null) ? second.overall() : first.overall(),
				SignsTold.together(first.signs(), second.signs()), base.unsure(), both(first.loads(), second.loads()));
	}

	/** What either told. */
	static Set<LoadKind> both(Set<LoadKind> one, Set<LoadKind> other) {
		Set<LoadKind> both = EnumSet.noneOf(LoadKind.class);
		both.addAll(one);
		both.addAll(other);
		return both;
	}

}

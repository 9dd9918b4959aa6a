package measuredwalk.reading;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.Date;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TimeZone;
import java.util.concurrent.ConcurrentHashMap;

import measuredwalk.reading.context.Annotation;
import measuredwalk.reading.words.Words;
import org.jspecify.annotations.Nullable;
import org.natty.DateGroup;
import org.natty.Parser;

/**
 * Reads the day a walk was on, when it was another than the message's: 'on Tuesday', 'the
 * day before yesterday'. Natty reads the words, but only those of the day, so that it
 * cannot turn minutes or doses into dates; and it is asked only when a word for a day is
 * there, for it is slow.
 */
final class DayReader {

	private static final Set<String> WEEKDAYS = Set.of("monday", "tuesday", "wednesday", "thursday", "friday",
			"saturday", "sunday");

	/** Words after which a day is compared with, and is not the day of the walk. */
	private static final Set<String> OTHER_DAY = Set.of("than", "as", "since", "like", "from", "until", "till",
			"before", "after", "for", "next", "every", "by", "to", "was", "and");

	private static final int DAYS_OF_WEEK = 7;

	/**
	 * What Natty read before, by phrase and day of the week: the few there are need not
	 * be read again.
	 */
	private static final Map<String, Long> DAYS_AWAY = new ConcurrentHashMap<>();

	private DayReader() {
	}

	static @Nullable LocalDate read(Annotation annotation, LocalDateTime now) {
		Words words = annotation.words();
		for (int at = 0; at < words.size(); at++) {
			boolean weekday = WEEKDAYS.contains(words.form(at));
			if ((weekday || words.is(at, "yesterday")) && !isOtherDay(words, at)) {
				return past(parsed(phrase(words, at), now), now);
			}
		}
		return null;
	}

	private static String phrase(Words words, int at) {
		boolean dayBefore = words.is(at - 1, "before") && words.is(at - 2, "day");
		return dayBefore ? "the day before yesterday" : words.form(at);
	}

	private static boolean isOtherDay(Words words, int at) {
		boolean dayBefore = words.is(at - 1, "before") && words.is(at - 2, "day");
		return !dayBefore && at > 0 && !words.isBreakBefore(at) && OTHER_DAY.contains(words.form(at - 1));
	}

	private static LocalDate parsed(String phrase, LocalDateTime now) {
		String key = phrase + now.getDayOfWeek();
		return now.toLocalDate().plusDays(DAYS_AWAY.computeIfAbsent(key, (unknown) -> daysAway(phrase, now)));
	}

	private static long daysAway(String phrase, LocalDateTime now) {
		Parser parser = new Parser(TimeZone.getTimeZone(ZoneOffset.UTC));
		List<DateGroup> groups = parser.parse(phrase, Date.from(now.toInstant(ZoneOffset.UTC)));
		if (groups.isEmpty() || groups.get(0).getDates().isEmpty()) {
			return 0;
		}
		LocalDate day = groups.get(0).getDates().get(0).toInstant().atZone(ZoneOffset.UTC).toLocalDate();
		return ChronoUnit.DAYS.between(now.toLocalDate(), day);
	}

	/** A walk that was taken is no later than its message; a weekday is the last one. */
	private static @Nullable LocalDate past(LocalDate day, LocalDateTime now) {
		LocalDate last = day;
		while (last.isAfter(now.toLocalDate())) {
			last = last.minusDays(DAYS_OF_WEEK);
		}
		return last.equals(now.toLocalDate()) ? null : last;
	}

}

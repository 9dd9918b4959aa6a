package measuredwalk.escalation;

import java.time.DateTimeException;
import java.time.DayOfWeek;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * When the clinic is open.
 *
 * @param spans the times of a week; none means that nothing can wait
 * @param zone the clinic's zone
 */
public record OpeningHours(List<Span> spans, ZoneId zone) {

	private static final Pattern SPAN = Pattern
		.compile("(?<from>[a-z]{3})(?:-(?<to>[a-z]{3}))? (?<opens>\\d\\d:\\d\\d)-(?<closes>\\d\\d:\\d\\d)");

	private static final int WEEK = 7;

	/**
	 * A time of one day of the week.
	 *
	 * @param day the day
	 * @param opens when it opens
	 * @param closes when it closes, later than it opens
	 */
	public record Span(DayOfWeek day, LocalTime opens, LocalTime closes) {
	}

	public OpeningHours {
		spans = List.copyOf(spans);
	}

	/**
	 * Reads opening hours as people write them.
	 * @param text such as 'Mon-Fri 08:30-18:00, Sat 09:00-12:00'
	 * @param zone the clinic's zone
	 * @return the hours
	 * @throws IllegalArgumentException when they cannot be read; the message says how to
	 * write them
	 */
	public static OpeningHours of(String text, ZoneId zone) {
		List<Span> spans = new ArrayList<>();
		for (String part : text.split(",")) {
			if (!part.isBlank()) {
				spans.addAll(spans(part.strip()));
			}
		}
		return new OpeningHours(spans, zone);
	}

	private static List<Span> spans(String part) {
		Matcher matcher = SPAN.matcher(part.toLowerCase(Locale.ROOT));
		if (!matcher.matches()) {
			throw unreadable(part);
		}
		try {
			LocalTime opens = LocalTime.parse(matcher.group("opens"));
			LocalTime closes = LocalTime.parse(matcher.group("closes"));
			DayOfWeek from = day(matcher.group("from"), part);
			DayOfWeek to = (matcher.group("to") != null) ? day(matcher.group("to"), part) : from;
			if (!closes.isAfter(opens) || to.compareTo(from) < 0) {
				throw unreadable(part);
			}
			return java.util.Arrays.stream(DayOfWeek.values())
				.filter((day) -> day.compareTo(from) >= 0 && day.compareTo(to) <= 0)
				.map((day) -> new Span(day, opens, closes))
				.toList();
		}
		catch (DateTimeException ex) {
			throw new IllegalArgumentException(unreadable(part).getMessage(), ex);
		}
	}

	private static DayOfWeek day(String name, String part) {
		return java.util.Arrays.stream(DayOfWeek.values())
			.filter((day) -> day.name().toLowerCase(Locale.ROOT).startsWith(name))
			.findFirst()
			.orElseThrow(() -> unreadable(part));
	}

	private static IllegalArgumentException unreadable(String part) {
		return new IllegalArgumentException("The opening hours '" + part
				+ "' cannot be read; write them as 'Mon-Fri 08:30-18:00, Sat 09:00-12:00'.");
	}

	/**
	 * Whether the clinic is open.
	 * @param at the time
	 * @return true while it is
	 */
	public boolean openAt(Instant at) {
		return nextOpen(at).equals(at);
	}

	/**
	 * The first time from a time on at which the clinic is open.
	 * @param from the time
	 * @return the same time while it is open, or when it opens next
	 */
	public Instant nextOpen(Instant from) {
		ZonedDateTime local = from.atZone(this.zone);
		Optional<Instant> next = java.util.stream.IntStream.rangeClosed(0, WEEK)
			.mapToObj((days) -> local.toLocalDate().plusDays(days))
			.flatMap((date) -> this.spans.stream()
				.filter((span) -> span.day() == date.getDayOfWeek() && at(date, span.closes()).isAfter(from))
				.map((span) -> at(date, span.opens())))
			.map((opens) -> opens.isBefore(from) ? from : opens)
			.min(Comparator.naturalOrder());
		return next.orElse(from);
	}

	/**
	 * The time when the clinic will have been open for so many minutes.
	 * @param from the time to count from
	 * @param minutes minutes of opening
	 * @return that time
	 */
	public Instant afterOpenMinutes(Instant from, int minutes) {
		Instant time = nextOpen(from);
		for (int left = minutes; left > 0; left--) {
			time = nextOpen(time.plusSeconds(60));
		}
		return time;
	}

	private Instant at(LocalDate date, LocalTime time) {
		return ZonedDateTime.of(date, time, this.zone).toInstant();
	}

}

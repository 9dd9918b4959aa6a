package measuredwalk.care;

import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Times of the day as people write them: '8', '17:30', '7.30am', '5 pm'. */
final class ClockWords {

	/** One time, for use inside other patterns; it has no groups. */
	static final String TIME = "\\d{1,2}(?:[:.]\\d{2})?(?:\\s*[ap]m\\b)?(?![\\d:])";

	private static final Pattern PARTS = Pattern.compile("(\\d{1,2})(?:[:.](\\d{2}))?(?:\\s*([ap])m\\b)?");

	private static final int NOON = 12;

	private ClockWords() {
	}

	/**
	 * The times in a text, in order. 'At 8 and 5' are 08:00 and 17:00: a time without am
	 * or pm that would come before the one before it is of the afternoon.
	 * @return the times, or none when one of them is no time of the day
	 */
	static List<LocalTime> all(String text) {
		List<LocalTime> times = new ArrayList<>();
		Matcher parts = PARTS.matcher(text.toLowerCase(Locale.ROOT));
		while (parts.find()) {
			Optional<LocalTime> time = time(parts);
			if (time.isEmpty()) {
				return List.of();
			}
			times.add(inOrder(time.get(), times, parts.group(3) != null));
		}
		return times;
	}

	private static LocalTime inOrder(LocalTime time, List<LocalTime> before, boolean halfOfDayTold) {
		boolean tooEarly = !before.isEmpty() && time.isBefore(before.get(before.size() - 1));
		return (tooEarly && !halfOfDayTold && time.getHour() < NOON) ? time.plusHours(NOON) : time;
	}

	private static Optional<LocalTime> time(Matcher parts) {
		int hour = Integer.parseInt(parts.group(1));
		int minute = (parts.group(2) != null) ? Integer.parseInt(parts.group(2)) : 0;
		if (parts.group(3) != null) {
			if (hour < 1 || hour > NOON) {
				return Optional.empty();
			}
			hour = hour % NOON + (parts.group(3).equals("p") ? NOON : 0);
		}
		return (hour > 23 || minute > 59) ? Optional.empty() : Optional.of(LocalTime.of(hour, minute));
	}

}

package measuredwalk.care;

import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;

/**
 * Learns from when walks began which hours are usual. All figures are common practice, no
 * source.
 *
 * <p>
 * There must be at least 8 walks on at least 5 days. Walks that began less than 90
 * minutes after one another, whatever the day, are one habit; a habit is usual when it
 * was kept on at least half of the days with walks. Its hour is the median, to the
 * quarter hour.
 */
final class WalkHabits {

	/** What lies further back says little of today's habits. */
	static final int DAYS = 21;

	private static final int LEAST_WALKS = 8;

	private static final int LEAST_DAYS = 5;

	private static final int MINUTES_BETWEEN_HABITS = 90;

	private static final int QUARTER_HOUR = 15;

	private static final int MINUTES_IN_DAY = 24 * 60;

	private WalkHabits() {
	}

	/** The usual hours in order, or none when too little is known. */
	static List<LocalTime> learned(List<LocalDateTime> beginnings) {
		long days = days(beginnings);
		if (beginnings.size() < LEAST_WALKS || days < LEAST_DAYS) {
			return List.of();
		}
		return habits(beginnings).stream().filter((habit) -> 2 * days(habit) >= days).map(WalkHabits::hour).toList();
	}

	private static long days(List<LocalDateTime> beginnings) {
		return beginnings.stream().map(LocalDateTime::toLocalDate).distinct().count();
	}

	private static List<List<LocalDateTime>> habits(List<LocalDateTime> beginnings) {
		List<List<LocalDateTime>> habits = new ArrayList<>();
		int last = -MINUTES_IN_DAY;
		for (LocalDateTime each : sortedByTimeOfDay(beginnings)) {
			if (minuteOfDay(each) - last > MINUTES_BETWEEN_HABITS) {
				habits.add(new ArrayList<>());
			}
			habits.get(habits.size() - 1).add(each);
			last = minuteOfDay(each);
		}
		return habits;
	}

	private static List<LocalDateTime> sortedByTimeOfDay(List<LocalDateTime> beginnings) {
		return beginnings.stream().sorted((one, other) -> minuteOfDay(one) - minuteOfDay(other)).toList();
	}

	private static LocalTime hour(List<LocalDateTime> habit) {
		int median = minuteOfDay(habit.get(habit.size() / 2));
		int rounded = Math.round((float) median / QUARTER_HOUR) * QUARTER_HOUR;
		return LocalTime.ofSecondOfDay(rounded % MINUTES_IN_DAY * 60L);
	}

	private static int minuteOfDay(LocalDateTime time) {
		return time.toLocalTime().toSecondOfDay() / 60;
	}

}

package measuredwalk.care;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;

import org.junit.jupiter.api.Test;

import static org.assertj.core.api.Assertions.assertThat;

class WalkHabitsTests {

	private static List<LocalDateTime> daily(int days, String... times) {
		List<LocalDateTime> beginnings = new ArrayList<>();
		for (int day = 0; day < days; day++) {
			LocalDate date = LocalDate.of(2026, 5, 1).plusDays(day);
			for (String time : times) {
				beginnings.add(date.atTime(LocalTime.parse(time)).plusMinutes(day % 3 * 5));
			}
		}
		return beginnings;
	}

	@Test
	void twoWalksADayMakeTwoHoursToTheQuarterHour() {
		assertThat(WalkHabits.learned(daily(6, "08:02", "17:24"))).containsExactly(LocalTime.of(8, 0),
				LocalTime.of(17, 30));
	}

	@Test
	void tooFewWalksOrDaysTeachNothing() {
		assertThat(WalkHabits.learned(daily(7, "08:00"))).isEmpty();
		assertThat(WalkHabits.learned(daily(4, "08:00", "12:00", "18:00"))).isEmpty();
		assertThat(WalkHabits.learned(List.of())).isEmpty();
	}

	@Test
	void anHourThatIsKeptOnFewDaysIsNoHabit() {
		List<LocalDateTime> beginnings = daily(10, "08:00");
		beginnings.addAll(daily(4, "13:00"));
		assertThat(WalkHabits.learned(beginnings)).containsExactly(LocalTime.of(8, 0));
	}

	@Test
	void walksAtAnyHourTeachNoHour() {
		List<LocalDateTime> beginnings = new ArrayList<>();
		for (int day = 0; day < 10; day++) {
			beginnings.add(LocalDate.of(2026, 5, 1).plusDays(day).atTime(2 * day + 2, 0));
		}
		assertThat(WalkHabits.learned(beginnings)).isEmpty();
	}

}

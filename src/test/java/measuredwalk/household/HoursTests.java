package measuredwalk.household;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.Set;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import static org.assertj.core.api.Assertions.assertThat;

class HoursTests {

	@ParameterizedTest
	@CsvSource({ "21:29, false", "21:30, true", "23:59, true", "00:00, true", "06:59, true", "07:00, false",
			"12:00, false" })
	void itIsQuietThroughTheNight(LocalTime time, boolean quiet) {
		assertThat(Hours.usual().quietAt(time)).isEqualTo(quiet);
	}

	@ParameterizedTest
	@CsvSource({ "12:59, false", "13:00, true", "14:59, true", "15:00, false", "23:00, false" })
	void aQuietAfternoonIsQuietInTheAfternoonOnly(LocalTime time, boolean quiet) {
		Hours hours = Hours.usual().withQuiet(LocalTime.of(13, 0), LocalTime.of(15, 0));
		assertThat(hours.quietAt(time)).isEqualTo(quiet);
	}

	@Test
	void aDayOffIsOffEachWeek() {
		Hours hours = Hours.usual().withDaysOff(Set.of(DayOfWeek.SUNDAY));
		assertThat(hours.offOn(LocalDate.of(2026, 3, 29))).isTrue();
		assertThat(hours.offOn(LocalDate.of(2026, 3, 30))).isFalse();
	}

}

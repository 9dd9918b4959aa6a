package measuredwalk.escalation.course;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;

import measuredwalk.journal.MorningEntry;
import measuredwalk.journal.MorningFacts;
import measuredwalk.journal.Standing;
import measuredwalk.journal.Teller;
import measuredwalk.signs.Severity;
import measuredwalk.signs.Sign;
import measuredwalk.signs.SignKind;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import static org.assertj.core.api.Assertions.assertThat;

class FlaresTests {

	/** Days as digits of their grade, a dash where nothing was told. */
	@ParameterizedTest
	@CsvSource({ "00000000,0", "00100000,0", "00110000,1", "00222000,1", "01100110,2", "001--1000,1", "001----10000,0",
			"111111111,0", "11121221111,1", "0000002,0", "00000022,1", "------,0" })
	void aSpellIntoAFurtherDayAboveTheOwnUsualIsOneFlare(String grades, int flares) {
		List<CourseDay> days = new ArrayList<>();
		for (int i = 0; i < grades.length(); i++) {
			days.add(day(LocalDate.of(2026, 3, 1).plusDays(i), grades.charAt(i)));
		}
		assertThat(Flares.in(days)).isEqualTo(flares);
	}

	private static CourseDay day(LocalDate date, char grade) {
		if (grade == '-') {
			return new CourseDay(date, List.of(), null);
		}
		List<Sign> signs = (grade == '0') ? List.of()
				: List.of(new Sign(SignKind.STIFFNESS, true, Severity.values()[grade - '1'], null, null, null, null));
		return new CourseDay(date, List.of(),
				new MorningEntry(UUID.randomUUID(), 1, Standing.COUNTS, UUID.randomUUID(),
						new MorningFacts(date, null, null, signs, List.of()), List.of(),
						new Teller(UUID.randomUUID(), "Wren"), date.atStartOfDay().toInstant(java.time.ZoneOffset.UTC),
						date.atStartOfDay().toInstant(java.time.ZoneOffset.UTC), null, null));
	}

}

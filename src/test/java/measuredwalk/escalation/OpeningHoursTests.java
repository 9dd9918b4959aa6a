package measuredwalk.escalation;

import java.time.Instant;
import java.time.ZoneId;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

class OpeningHoursTests {

	private final OpeningHours hours = OpeningHours.of("Mon-Fri 08:30-18:00, Sat 09:00-12:00",
			ZoneId.of("Europe/London"));

	@ParameterizedTest
	@CsvSource({
			// Friday noon, Friday at closing time, Saturday afternoon, Sunday.
			"2026-03-13T12:00:00Z, 2026-03-13T12:00:00Z", "2026-03-13T18:00:00Z, 2026-03-14T09:00:00Z",
			"2026-03-14T15:00:00Z, 2026-03-16T08:30:00Z", "2026-03-15T10:00:00Z, 2026-03-16T08:30:00Z",
			// The clocks go forward in London on 29 March 2026.
			"2026-03-28T15:00:00Z, 2026-03-30T07:30:00Z" })
	void opensNext(Instant from, Instant opens) {
		assertThat(this.hours.nextOpen(from)).isEqualTo(opens);
	}

	@ParameterizedTest
	@CsvSource({ "2026-03-13T12:00:00Z, 2026-03-13T14:00:00Z", "2026-03-13T17:00:00Z, 2026-03-14T10:00:00Z",
			"2026-03-15T10:00:00Z, 2026-03-16T10:30:00Z" })
	void twoOpenHoursLater(Instant from, Instant later) {
		assertThat(this.hours.afterOpenMinutes(from, 120)).isEqualTo(later);
	}

	@Test
	void withoutHoursNothingWaits() {
		Instant sunday = Instant.parse("2026-03-15T10:00:00Z");
		assertThat(OpeningHours.of("", ZoneId.of("UTC")).openAt(sunday)).isTrue();
	}

	@ParameterizedTest
	@ValueSource(strings = { "always", "Mon 18:00-08:00", "Fri-Mon 08:00-12:00", "Mon-Fri 8-18", "Mon 25:00-26:00",
			"Xyz 08:00-12:00" })
	void whatCannotBeReadIsRefusedWithTheWayToWriteIt(String text) {
		assertThatIllegalArgumentException().isThrownBy(() -> OpeningHours.of(text, ZoneId.of("UTC")))
			.withMessageContaining("Mon-Fri 08:30-18:00");
	}

}

package measuredwalk.clinic.pages;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;

import measuredwalk.escalation.ClinicSettings;
import measuredwalk.escalation.EscalationRule;
import measuredwalk.signs.Basis;
import measuredwalk.signs.Grade;
import org.junit.jupiter.api.Test;

import static org.assertj.core.api.Assertions.assertThat;
import static org.mockito.Mockito.mock;
import static org.mockito.Mockito.when;

class RulesTests {

	private final ClinicSettings settings = mock();

	private Rules rules(String now, LocalDate checkedOn) {
		when(this.settings.zone()).thenReturn(ZoneId.of("Europe/London"));
		EscalationRule rule = new EscalationRule("some-rule", "it fits",
				Basis.checked(Grade.C, "common practice, no source", checkedOn));
		return new Rules(List.of(() -> List.of(rule)), this.settings, new DosingWords(),
				Clock.fixed(Instant.parse(now), ZoneOffset.UTC));
	}

	@Test
	void nothingIsSaidWhileAllChecksCount() {
		assertThat(rules("2027-01-10T12:00:00Z", LocalDate.of(2025, 6, 1)).past()).isEmpty();
	}

	@Test
	void aRulePastItsDateIsNamedInWords() {
		Rules rules = rules("2027-06-02T12:00:00Z", LocalDate.of(2025, 6, 1));
		assertThat(rules.past().orElseThrow())
			.startsWith("One rule is past the date until which it was checked: Some rule.");
		assertThat(rules.all().get(1).lines().get(0).checked())
			.isEqualTo("Checked 1 Jun 2025, valid until 1 Jun 2027: past its date.");
	}

	@Test
	void manyAreCountedAndTheFirstNamed() {
		assertThat(rules("2030-01-10T12:00:00Z", LocalDate.of(2025, 6, 1)).past().orElseThrow()).contains(
				" rules are past the date until which they were checked: Emergency: a leg is not used;", "and more.");
	}

}

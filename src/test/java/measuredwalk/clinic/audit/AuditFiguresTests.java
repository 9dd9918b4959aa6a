package measuredwalk.clinic.audit;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.UUID;

import measuredwalk.escalation.Alert;
import measuredwalk.escalation.AlertLevel;
import measuredwalk.escalation.AlertStatus;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

import static org.assertj.core.api.Assertions.assertThat;

class AuditFiguresTests {

	private static final Instant NOW = Instant.parse("2026-03-29T12:00:00Z");

	private static DogAudit dog(int walks, int inBand, int flares, int answered) {
		return new DogAudit(UUID.randomUUID(), 28, walks, inBand, flares, answered, 28);
	}

	private static Alert alert(AlertLevel level, Duration ago, @Nullable Duration toSeen) {
		Instant raised = NOW.minus(ago);
		Instant seen = (toSeen != null) ? raised.plus(toSeen) : null;
		return new Alert(UUID.randomUUID(), UUID.randomUUID(), level, raised, "", List.of(),
				(seen != null) ? AlertStatus.ACKNOWLEDGED : AlertStatus.OPEN, (seen != null) ? "nettle" : null, seen,
				null, null, null, null);
	}

	@Test
	void aDogWithFewWalksIsNeitherInNorOutOfItsBand() {
		AuditFigures figures = AuditFigures.of(List.of(dog(6, 6, 0, 0), dog(7, 4, 0, 0), dog(7, 3, 0, 0)), List.of(),
				NOW);
		assertThat(figures.walked()).isEqualTo(2);
		assertThat(figures.withinBand()).isEqualTo(1);
	}

	@Test
	void flaresAreCountedAgainstTheTimeThatDogsWereLookedAfter() {
		AuditFigures figures = AuditFigures.of(List.of(dog(0, 0, 1, 0), dog(0, 0, 2, 0)), List.of(), NOW);
		assertThat(figures.dogWeeks()).isEqualTo(8);
		assertThat(figures.flareRate()).isEqualTo(37.5);
	}

	@Test
	void theMedianShareOfAnswersStandsBetweenItsQuartiles() {
		AuditFigures figures = AuditFigures
			.of(List.of(dog(0, 0, 0, 0), dog(0, 0, 0, 7), dog(0, 0, 0, 14), dog(0, 0, 0, 28)), List.of(), NOW);
		assertThat(figures.answersMedian()).isEqualTo(0.375);
		assertThat(figures.answersLow()).isEqualTo(0.1875);
		assertThat(figures.answersHigh()).isEqualTo(0.625);
	}

	@Test
	void alertsAreCountedByLevelWithTheTimeUntilSomebodyHadSeenThem() {
		List<Alert> alerts = List.of(alert(AlertLevel.EMERGENCY, Duration.ofDays(1), Duration.ofMinutes(4)),
				alert(AlertLevel.EMERGENCY, Duration.ofDays(2), Duration.ofMinutes(30)),
				alert(AlertLevel.EMERGENCY, Duration.ofDays(3), Duration.ofMinutes(9)),
				alert(AlertLevel.EMERGENCY, Duration.ofDays(3), null),
				alert(AlertLevel.EMERGENCY, Duration.ofDays(29), Duration.ofDays(9)));
		AuditFigures.AlertFigures emergencies = AuditFigures.of(List.of(), alerts, NOW).alerts().get(0);
		assertThat(emergencies).isEqualTo(new AuditFigures.AlertFigures(AlertLevel.EMERGENCY, 4, 1,
				Duration.ofMinutes(9), Duration.ofMinutes(30)));
	}

	@Test
	void withoutDogsThereAreNoFigures() {
		AuditFigures figures = AuditFigures.of(List.of(), List.of(), NOW);
		assertThat(figures.flareRate()).isNull();
		assertThat(figures.answersMedian()).isNull();
	}

}

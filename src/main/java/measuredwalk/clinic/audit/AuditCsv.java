package measuredwalk.clinic.audit;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;

import measuredwalk.escalation.Alert;
import measuredwalk.files.CsvTable;
import measuredwalk.household.Dog;

/** Writes the audit as CSV. */
final class AuditCsv {

	private static final List<String> HEAD = List.of("dog", "id", "days", "walks", "walks_within_band", "within_band",
			"flares", "mornings_answered", "mornings_expected", "alerts", "alerts_unseen",
			"median_minutes_to_acknowledge");

	private AuditCsv() {
	}

	static String of(List<Dog> dogs, List<DogAudit> audits, List<Alert> alerts, Instant now) {
		Map<UUID, DogAudit> byDog = audits.stream().collect(Collectors.toMap(DogAudit::dogId, Function.identity()));
		Map<UUID, List<Alert>> recent = alerts.stream()
			.filter((alert) -> AuditFigures.isRecent(alert, now))
			.collect(Collectors.groupingBy(Alert::dogId));
		return CsvTable.of(HEAD,
				dogs.stream()
					.filter((dog) -> byDog.containsKey(dog.id()))
					.map((dog) -> line(dog, byDog.get(dog.id()), recent.getOrDefault(dog.id(), List.of())))
					.toList());
	}

	private static List<String> line(Dog dog, DogAudit audit, List<Alert> alerts) {
		List<Duration> times = alerts.stream()
			.map(AuditFigures.AlertFigures::timeToSeen)
			.filter(Objects::nonNull)
			.sorted()
			.toList();
		String median = times.isEmpty() ? "" : String.valueOf(times.get((times.size() - 1) / 2).toMinutes());
		return List.of(dog.name(), dog.id().toString(), String.valueOf(audit.days()), String.valueOf(audit.walks()),
				String.valueOf(audit.walksInBand()),
				audit.walked() ? (audit.withinBand() ? "yes" : "no") : "too few walks", String.valueOf(audit.flares()),
				String.valueOf(audit.morningsAnswered()), String.valueOf(audit.morningsExpected()),
				String.valueOf(alerts.size()), String.valueOf(alerts.size() - times.size()), median);
	}

}

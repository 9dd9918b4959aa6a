package measuredwalk.clinic.audit;

import java.time.Duration;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;

import measuredwalk.escalation.Alert;
import measuredwalk.escalation.AlertLevel;
import org.jspecify.annotations.Nullable;

/**
 * Figures of the caseload over the last {@link Audits#DAYS} days; public for the
 * templates only.
 *
 * @param dogs dogs counted
 * @param walked dogs with enough walks to say whether they keep within the band
 * @param withinBand of these, dogs with at least half of their walks within the day's
 * suggested range
 * @param flares flares of all dogs
 * @param dogWeeks weeks that all dogs together were looked after
 * @param answersMedian median share of mornings answered, in [0, 1], or null without any
 * @param answersLow first quartile of it, or null
 * @param answersHigh third quartile of it, or null
 * @param alerts figures of the alerts by level, the gravest first
 */
public record AuditFigures(int dogs, int walked, int withinBand, int flares, double dogWeeks,
		@Nullable Double answersMedian, @Nullable Double answersLow, @Nullable Double answersHigh,
		List<AlertFigures> alerts) {

	public AuditFigures {
		alerts = List.copyOf(alerts);
	}

	/**
	 * Alerts of a level; public for the templates only.
	 *
	 * @param level the level
	 * @param raised how many were raised
	 * @param unseen how many of them nobody has seen yet
	 * @param medianToSeen median time until somebody had seen it, or null without any
	 * @param longestToSeen the longest such time, or null
	 */
	public record AlertFigures(AlertLevel level, int raised, int unseen, @Nullable Duration medianToSeen,
			@Nullable Duration longestToSeen) {

		private static AlertFigures of(AlertLevel level, List<Alert> alerts) {
			List<Duration> times = alerts.stream()
				.filter((alert) -> alert.level() == level)
				.map(AlertFigures::timeToSeen)
				.filter(Objects::nonNull)
				.sorted()
				.toList();
			int raised = (int) alerts.stream().filter((alert) -> alert.level() == level).count();
			return new AlertFigures(level, raised, raised - times.size(),
					times.isEmpty() ? null : times.get((times.size() - 1) / 2),
					times.isEmpty() ? null : times.get(times.size() - 1));
		}

		static @Nullable Duration timeToSeen(Alert alert) {
			return (alert.acknowledgedAt() != null) ? Duration.between(alert.raisedAt(), alert.acknowledgedAt()) : null;
		}
	}

	static AuditFigures of(List<DogAudit> dogs, List<Alert> alerts, Instant now) {
		List<Alert> recent = alerts.stream().filter((alert) -> isRecent(alert, now)).toList();
		double[] answers = dogs.stream()
			.filter((dog) -> dog.morningsExpected() > 0)
			.mapToDouble(DogAudit::answersShare)
			.sorted()
			.toArray();
		return new AuditFigures(dogs.size(), (int) dogs.stream().filter(DogAudit::walked).count(),
				(int) dogs.stream().filter(DogAudit::withinBand).count(),
				dogs.stream().mapToInt(DogAudit::flares).sum(), dogs.stream().mapToInt(DogAudit::days).sum() / 7.0,
				quantile(answers, 0.5), quantile(answers, 0.25), quantile(answers, 0.75),
				Arrays.stream(AlertLevel.values())
					.sorted(java.util.Comparator.reverseOrder())
					.map((level) -> AlertFigures.of(level, recent))
					.toList());
	}

	static boolean isRecent(Alert alert, Instant now) {
		return !alert.raisedAt().isBefore(now.minus(Duration.ofDays(Audits.DAYS)));
	}

	/** Between the two neighbours by their distance, as spreadsheets do. */
	private static @Nullable Double quantile(double[] sorted, double share) {
		if (sorted.length == 0) {
			return null;
		}
		double place = share * (sorted.length - 1);
		int below = (int) Math.floor(place);
		int above = Math.min(below + 1, sorted.length - 1);
		return sorted[below] + (place - below) * (sorted[above] - sorted[below]);
	}

	/**
	 * Flares per 100 dog-weeks.
	 * @return the rate, or null before any dog was looked after for a day
	 */
	public @Nullable Double flareRate() {
		return (this.dogWeeks > 0) ? 100 * this.flares / this.dogWeeks : null;
	}

}

package measuredwalk.clinic.pages;

import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.UUID;

import measuredwalk.escalation.Alert;
import measuredwalk.escalation.AlertStatus;
import measuredwalk.household.Dog;
import org.jspecify.annotations.Nullable;

/**
 * An alert on a page; public for the templates only.
 *
 * @param id its number
 * @param dogId the dog
 * @param dogName what the dog is called
 * @param level the level's code
 * @param levelWords the level in words
 * @param raisedAt when it was raised
 * @param raisedWords the same in words
 * @param reason why
 * @param evidence the owner's own words
 * @param open true until somebody has seen it
 * @param done true when it is closed
 * @param seen who has seen it and when, or null
 * @param course what became of it, in words
 * @param unsent what could not be sent, or null
 */
public record AlertLine(UUID id, UUID dogId, String dogName, String level, String levelWords, Instant raisedAt,
		String raisedWords, String reason, List<SaidLine> evidence, boolean open, boolean done, @Nullable String seen,
		String course, @Nullable String unsent) {

	static AlertLine of(Alert alert, Dog dog, @Nullable String unsent) {
		ZoneId zone = dog.household().timeZone();
		String raised = Wording.moment(alert.raisedAt(), zone);
		String seen = seen(alert, zone);
		List<SaidLine> evidence = alert.evidence()
			.stream()
			.map((each) -> new SaidLine(each.said(), each.by(), Wording.moment(each.at(), zone)))
			.toList();
		return new AlertLine(alert.id(), dog.id(), dog.name(), alert.level().code(), words(alert), alert.raisedAt(),
				raised, Wording.sentence(alert.reason()), evidence, alert.status() == AlertStatus.OPEN,
				alert.status() == AlertStatus.CLOSED, seen,
				raised + "; " + ((seen != null) ? seen : "not seen yet") + closed(alert, zone), unsent);
	}

	static String words(Alert alert) {
		return switch (alert.level()) {
			case EMERGENCY -> "Emergency";
			case SAME_DAY -> "Same day";
			case REVIEW -> "Review";
		};
	}

	private static @Nullable String seen(Alert alert, ZoneId zone) {
		if (alert.acknowledgedBy() == null || alert.acknowledgedAt() == null) {
			return null;
		}
		String note = (alert.note() == null || alert.note().isBlank()) ? "" : ": " + alert.note();
		return "seen by " + alert.acknowledgedBy() + ", " + Wording.moment(alert.acknowledgedAt(), zone) + note;
	}

	private static String closed(Alert alert, ZoneId zone) {
		if (alert.status() != AlertStatus.CLOSED || alert.closedAt() == null) {
			return "";
		}
		String note = (alert.closeNote() == null || alert.closeNote().isBlank()) ? "" : ": " + alert.closeNote();
		return "; closed by " + alert.closedBy() + ", " + Wording.moment(alert.closedAt(), zone) + note;
	}

}

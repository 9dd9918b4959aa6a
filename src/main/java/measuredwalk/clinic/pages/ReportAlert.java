package measuredwalk.clinic.pages;

import java.time.Duration;
import java.time.ZoneId;

import measuredwalk.escalation.Alert;
import org.jspecify.annotations.Nullable;

/**
 * An alert in a report, short enough for one page; public for the templates only.
 *
 * @param level the level in words
 * @param raised when it was raised
 * @param reason why
 * @param done who has seen it, how soon, and what was done
 */
public record ReportAlert(String level, String raised, String reason, String done) {

	private static final int LONGEST = 100;

	static ReportAlert of(Alert alert, ZoneId zone) {
		return new ReportAlert(AlertLine.words(alert), Wording.moment(alert.raisedAt(), zone), cut(alert.reason()),
				done(alert, zone));
	}

	private static String done(Alert alert, ZoneId zone) {
		if (alert.acknowledgedAt() == null) {
			return "not seen yet";
		}
		String seen = "seen by " + alert.acknowledgedBy() + " after "
				+ Wording.span(Duration.between(alert.raisedAt(), alert.acknowledgedAt())) + note(alert.note());
		if (alert.closedAt() == null) {
			return seen + "; still open";
		}
		boolean again = java.util.Objects.equals(alert.note(), alert.closeNote());
		return seen + "; closed " + Wording.moment(alert.closedAt(), zone) + (again ? "" : note(alert.closeNote()));
	}

	private static String note(@Nullable String note) {
		return (note == null || note.isBlank()) ? "" : ": " + cut(note.strip());
	}

	private static String cut(String text) {
		return (text.length() <= LONGEST) ? text : text.substring(0, LONGEST) + "\u2026";
	}

}

package measuredwalk.clinic.pages;

import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;

import measuredwalk.journal.WalkFacts;
import measuredwalk.tolerance.Suggestion;
import org.jspecify.annotations.Nullable;

/**
 * A day of the course as a row of a table; public for the templates only.
 *
 * @param day the day
 * @param suggested what was suggested
 * @param tolerance the tolerance, with its 80 percent interval
 * @param walks minutes walked, with what made a walk harder
 * @param signs signs seen on the walks
 * @param morning how the morning was
 * @param changes plan and medicine changes
 */
public record CourseRow(String day, String suggested, String tolerance, String walks, String signs, String morning,
		String changes) {

	static CourseRow of(CourseDay day) {
		String walks = day.walks().stream().map(CourseRow::minutes).collect(Collectors.joining(", "));
		String signs = day.walks()
			.stream()
			.flatMap((walk) -> walk.signs().stream())
			.filter((sign) -> sign.present())
			.map(Wording::sign)
			.collect(Collectors.joining("; "));
		String changes = day.changes().stream().map(CourseDay.Change::words).collect(Collectors.joining("; "));
		return new CourseRow(Wording.shortDay(day.date()), suggested(day.suggestion()), tolerance(day.suggestion()),
				walks, signs, (day.morning() != null) ? Wording.words(day.morning()) : "not told", changes);
	}

	static List<CourseRow> newestFirst(List<CourseDay> days) {
		List<CourseRow> rows = new java.util.ArrayList<>(days.stream().map(CourseRow::of).toList());
		java.util.Collections.reverse(rows);
		return rows;
	}

	private static String minutes(WalkFacts walk) {
		String minutes = (Objects.requireNonNullElse(walk.minutes(), 0.0) > 0) ? Wording.figure(walk.minutes()) : "?";
		return walk.loads().isEmpty() ? minutes : minutes + " (" + Wording.loads(walk.loads()) + ")";
	}

	private static String suggested(@Nullable Suggestion suggestion) {
		return (suggestion != null) ? Wording.dose(suggestion.walks(), suggestion.minutes()) : "";
	}

	private static String tolerance(@Nullable Suggestion suggestion) {
		return (suggestion == null) ? ""
				: Wording.figure(Math.rint(suggestion.toleranceMedian())) + " ("
						+ Wording.figure(Math.rint(suggestion.toleranceLow())) + " to "
						+ Wording.figure(Math.rint(suggestion.toleranceHigh())) + ")";
	}

}

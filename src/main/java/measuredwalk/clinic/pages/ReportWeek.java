package measuredwalk.clinic.pages;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.function.ToDoubleFunction;

import measuredwalk.journal.MorningFacts;
import measuredwalk.journal.WalkFacts;
import measuredwalk.signs.Sign;
import measuredwalk.suggestions.MorningLook;
import measuredwalk.tolerance.Suggestion;

/**
 * A week of the re-check report; public for the templates only.
 *
 * @param from its first day
 * @param walked mean minutes a day told of, and on how many days
 * @param suggested the suggested walk at its end
 * @param tolerance the tolerance at its end, with the 80 percent interval
 * @param signs walks with signs, of walks told of
 * @param worse worse mornings, of mornings told of
 * @param stiffness mean and longest morning stiffness, in minutes
 */
public record ReportWeek(String from, String walked, String suggested, String tolerance, String signs, String worse,
		String stiffness) {

	private static final int DAYS = 7;

	/** The weeks until the last day, the newest first. */
	static List<ReportWeek> of(List<CourseDay> course, List<MorningFacts> mornings, LocalDate last, int weeks) {
		List<ReportWeek> all = new ArrayList<>();
		for (int week = 0; week < weeks; week++) {
			LocalDate to = last.minusDays((long) DAYS * week);
			LocalDate from = to.minusDays(DAYS - 1L);
			List<CourseDay> days = course.stream()
				.filter((day) -> !day.date().isBefore(from) && !day.date().isAfter(to))
				.toList();
			if (!days.isEmpty()) {
				all.add(week(from, days,
						mornings.stream()
							.filter((each) -> !each.date().isBefore(from) && !each.date().isAfter(to))
							.toList()));
			}
		}
		return List.copyOf(all);
	}

	private static ReportWeek week(LocalDate from, List<CourseDay> days, List<MorningFacts> mornings) {
		List<WalkFacts> walks = days.stream().flatMap((day) -> day.walks().stream()).toList();
		long daysWalked = days.stream().filter((day) -> !day.walks().isEmpty()).count();
		double minutes = walks.stream()
			.map(WalkFacts::minutes)
			.filter(Objects::nonNull)
			.mapToDouble(Double::doubleValue)
			.sum();
		long withSigns = walks.stream().filter((walk) -> walk.signs().stream().anyMatch(Sign::present)).count();
		long worse = days.stream().filter((day) -> day.morning() == MorningLook.WORSE).count();
		return new ReportWeek(Wording.shortDay(from),
				(daysWalked == 0) ? "nothing told" : Math.round(minutes / daysWalked) + " (" + daysWalked + " days)",
				last(days, Suggestion::walks) + " x " + last(days, Suggestion::minutes) + " min",
				last(days, Suggestion::toleranceMedian) + " (" + last(days, Suggestion::toleranceLow) + " to "
						+ last(days, Suggestion::toleranceHigh) + ")",
				withSigns + " of " + walks.size(), worse + " of " + mornings.size(), stiffness(mornings));
	}

	private static String last(List<CourseDay> days, ToDoubleFunction<Suggestion> figure) {
		Suggestion last = Objects.requireNonNull(days.get(days.size() - 1).suggestion());
		return String.format(Locale.ROOT, "%.0f", figure.applyAsDouble(last));
	}

	private static String stiffness(List<MorningFacts> mornings) {
		var told = mornings.stream()
			.map(MorningFacts::stiffMinutes)
			.filter(Objects::nonNull)
			.mapToDouble(Double::doubleValue)
			.summaryStatistics();
		return (told.getCount() == 0) ? "-" : Math.round(told.getAverage()) + ", longest " + Math.round(told.getMax())
				+ " (" + told.getCount() + ")";
	}

}

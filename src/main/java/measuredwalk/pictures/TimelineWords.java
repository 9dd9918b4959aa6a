package measuredwalk.pictures;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/** A course in words. */
final class TimelineWords {

	private TimelineWords() {
	}

	static String summary(String dog, List<PictureDay> days) {
		List<PictureDay.Suggested> suggested = days.stream()
			.map(PictureDay::suggested)
			.filter(Objects::nonNull)
			.toList();
		if (suggested.isEmpty()) {
			return PictureWords.of("timeline.empty", dog);
		}
		List<PictureDay.Walk> walks = days.stream().flatMap((day) -> day.walks().stream()).toList();
		PictureDay.Suggested last = suggested.get(suggested.size() - 1);
		return PictureWords.of("timeline.summary", dog, PictureWords.day(days.get(0).date()),
				PictureWords.day(days.get(days.size() - 1).date()), walks.size(),
				walks.stream().filter(PictureDay.Walk::withSigns).count(), mornings(days, PictureDay.Morning.WORSE),
				days.size() - mornings(days, PictureDay.Morning.NOT_TOLD),
				PictureWords.figure(suggested.stream().mapToDouble(PictureDay.Suggested::minutes).min().orElse(0)),
				PictureWords.figure(suggested.stream().mapToDouble(PictureDay.Suggested::minutes).max().orElse(0)),
				PictureWords.figure(last.toleranceMedian()), PictureWords.figure(last.toleranceLow()),
				PictureWords.figure(last.toleranceHigh()), days.stream().mapToInt((day) -> day.changes().size()).sum());
	}

	private static long mornings(List<PictureDay> days, PictureDay.Morning morning) {
		return days.stream().filter((day) -> day.morning() == morning).count();
	}

	static String line(PictureDay day) {
		List<String> parts = new ArrayList<>();
		PictureDay.Suggested suggested = day.suggested();
		parts.add((suggested == null) ? PictureWords.day(day.date())
				: PictureWords.of("timeline.line", PictureWords.day(day.date()), suggested.walks(),
						PictureWords.figure(suggested.minutes()), PictureWords.figure(suggested.toleranceMedian()),
						PictureWords.figure(suggested.toleranceLow()), PictureWords.figure(suggested.toleranceHigh())));
		day.walks()
			.forEach((walk) -> parts.add(PictureWords.of(walk.withSigns() ? "walk.signs" : "walk",
					PictureWords.figure(walk.minutes()), walk.signs())));
		parts.add(PictureWords.morning(day.morning()));
		day.changes().stream().map(PictureDay.Change::words).forEach(parts::add);
		return String.join("; ", parts);
	}

}

package measuredwalk.suggestions;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

import measuredwalk.tolerance.Suggestion;
import measuredwalk.tolerance.ToleranceCourse;
import measuredwalk.tolerance.ToleranceEvent;
import measuredwalk.tolerance.ToleranceModel;

/** Follows a dog once through its history and keeps each morning's suggestion. */
final class SuggestedDays {

	private final ToleranceModel model;

	SuggestedDays(ToleranceModel model) {
		this.model = model;
	}

	List<Suggestion> from(List<ToleranceEvent> history, LocalDate from, LocalDate until) {
		ToleranceCourse course = this.model.follow(history.subList(0, 1));
		List<Suggestion> days = new ArrayList<>();
		int next = 1;
		for (LocalDate day = history.get(0).date(); !day.isAfter(until); day = day.plusDays(1)) {
			next = tell(course, history, next, day, false);
			if (!day.isBefore(from)) {
				days.add(course.suggest(day));
			}
			next = tell(course, history, next, day, true);
		}
		return List.copyOf(days);
	}

	/** Tells what comes next of a day: up to its first walk, or all of it. */
	private static int tell(ToleranceCourse course, List<ToleranceEvent> history, int first, LocalDate day,
			boolean withWalks) {
		int next = first;
		while (next < history.size() && history.get(next).date().equals(day)
				&& (withWalks || !(history.get(next) instanceof ToleranceEvent.WalkTaken))) {
			course.tell(history.get(next));
			next++;
		}
		return next;
	}

}

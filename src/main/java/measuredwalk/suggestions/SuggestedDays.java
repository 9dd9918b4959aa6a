package measuredwalk.suggestions;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

import measuredwalk.tolerance.Suggestion;
import measuredwalk.tolerance.ToleranceCourse;
import measuredwalk.tolerance.ToleranceEvent;

/** Follows a dog on from where it is known and keeps each morning's suggestion. */
final class SuggestedDays {

	private SuggestedDays() {
	}

	static List<Suggestion> of(FollowedDogs.Branch branch, LocalDate from, LocalDate until) {
		ToleranceCourse course = branch.course();
		List<Suggestion> days = new ArrayList<>();
		int next = 0;
		for (LocalDate day = branch.first(); !day.isAfter(until); day = day.plusDays(1)) {
			next = tell(course, branch.rest(), next, day, false);
			if (!day.isBefore(from)) {
				days.add(course.suggest(day));
			}
			next = tell(course, branch.rest(), next, day, true);
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

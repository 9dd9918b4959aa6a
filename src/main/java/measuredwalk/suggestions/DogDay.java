package measuredwalk.suggestions;

import java.time.LocalDate;
import java.util.List;

import measuredwalk.journal.WalkFacts;
import measuredwalk.tolerance.Suggestion;
import org.jspecify.annotations.Nullable;

/**
 * A day of a dog: what was suggested, and what was told.
 *
 * @param date the day
 * @param suggestion what was suggested that morning
 * @param walks the walks that were told of
 * @param morning how the morning was, or null when nothing was told of it
 */
public record DogDay(LocalDate date, Suggestion suggestion, List<WalkFacts> walks, @Nullable MorningLook morning) {

	public DogDay {
		walks = List.copyOf(walks);
	}

	/**
	 * Whether anything was told of the day.
	 * @return true when a walk or the morning was
	 */
	public boolean told() {
		return !this.walks.isEmpty() || this.morning != null;
	}

}

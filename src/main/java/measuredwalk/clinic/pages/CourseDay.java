package measuredwalk.clinic.pages;

import java.time.LocalDate;
import java.util.List;

import measuredwalk.journal.WalkFacts;
import measuredwalk.pictures.PictureDay;
import measuredwalk.suggestions.MorningLook;
import measuredwalk.tolerance.Suggestion;
import org.jspecify.annotations.Nullable;

/**
 * A day of a dog's course.
 *
 * @param date the day
 * @param suggestion what was suggested that morning, or null before it was taken on
 * @param walks the walks that were told of
 * @param morning how the morning was, or null when nothing was told of it
 * @param changes plan and medicine changes, in words
 */
record CourseDay(LocalDate date, @Nullable Suggestion suggestion, List<WalkFacts> walks, @Nullable MorningLook morning,
		List<Change> changes) {

	/** A change that the clinic made. */
	record Change(PictureDay.ChangeKind kind, String words) {
	}

}

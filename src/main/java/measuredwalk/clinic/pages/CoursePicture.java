package measuredwalk.clinic.pages;

import java.util.List;
import java.util.stream.Collectors;

import measuredwalk.journal.WalkFacts;
import measuredwalk.pictures.Picture;
import measuredwalk.pictures.PictureDay;
import measuredwalk.pictures.TimelinePicture;
import measuredwalk.signs.Sign;
import measuredwalk.tolerance.Suggestion;
import org.jspecify.annotations.Nullable;

/** Puts a course on a picture. */
final class CoursePicture {

	private CoursePicture() {
	}

	static Picture of(String dog, List<CourseDay> course, int width) {
		return TimelinePicture.of(dog, course.stream().map(CoursePicture::day).toList(), width);
	}

	private static PictureDay day(CourseDay day) {
		return new PictureDay(day.date(), suggested(day.suggestion()),
				day.walks().stream().filter((walk) -> walk.minutes() != null).map(CoursePicture::walk).toList(),
				(day.morning() != null) ? PictureDay.Morning.valueOf(day.morning().name())
						: PictureDay.Morning.NOT_TOLD,
				day.changes().stream().map(CoursePicture::change).toList());
	}

	private static PictureDay.@Nullable Suggested suggested(@Nullable Suggestion suggestion) {
		return (suggestion == null) ? null : new PictureDay.Suggested(suggestion.walks(), suggestion.minutes(),
				suggestion.toleranceLow(), suggestion.toleranceMedian(), suggestion.toleranceHigh());
	}

	private static PictureDay.Walk walk(WalkFacts walk) {
		String signs = walk.signs().stream().filter(Sign::present).map(Wording::sign).collect(Collectors.joining("; "));
		return new PictureDay.Walk(java.util.Objects.requireNonNull(walk.minutes()), signs);
	}

	private static PictureDay.Change change(CourseDay.Change change) {
		return new PictureDay.Change(change.kind(), change.words());
	}

}

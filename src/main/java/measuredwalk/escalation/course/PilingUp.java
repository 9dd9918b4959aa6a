package measuredwalk.escalation.course;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * Signs that pile up: the chart of the daily burden over the days since the last change
 * of a medicine, against the dog's own first four weeks of them.
 */
final class PilingUp {

	/** Days told of that make the dog's own baseline: clinical rules, 'Piling up'. */
	private static final int BASELINE_DAYS = 28;

	/** With fewer days the baseline is no more than an assumption. Ours, no source. */
	private static final int FEWEST_BASELINE_DAYS = 10;

	private static final int SHOWN_DAYS = 7;

	private PilingUp() {
	}

	/**
	 * Looks for an alarm. The chart begins again when a medicine changes.
	 * @param course all days since the dog was taken on
	 */
	static Optional<Finding> in(DogCourse course) {
		List<CourseDay> told = course.days()
			.stream()
			.filter((day) -> day.told() && !day.date().isBefore(course.medicineChangedOn()))
			.toList();
		double level = level(told.stream().map(CourseDay::grade).toList(),
				(usual) -> BurdenChart.of(usual, course.design().burdenDays()));
		return (level >= 1) ? Optional.of(found(level, told)) : Optional.empty();
	}

	/**
	 * The sum after these days as a part of the limit, 0 while there is no baseline.
	 * @param grades grades of the days told of, the oldest first
	 * @param design designs the chart for what is usual
	 */
	static double level(List<Integer> grades, Function<UsualDays, BurdenChart> design) {
		int baseline = Math.min(BASELINE_DAYS, grades.size() / 2);
		if (baseline < FEWEST_BASELINE_DAYS) {
			return 0;
		}
		return design.apply(UsualDays.of(grades.subList(0, baseline))).level(grades.subList(baseline, grades.size()));
	}

	private static Finding found(double level, List<CourseDay> told) {
		List<CourseDay> last = told.subList(Math.max(0, told.size() - SHOWN_DAYS), told.size());
		return new Finding(
				"Signs piling up: the daily burden has been above this dog's own usual for longer than chance"
						+ " explains",
				level,
				last.stream().filter((day) -> day.grade() > 0).flatMap((day) -> day.evidence().stream()).toList());
	}

}

package measuredwalk.escalation.course;

import java.util.List;
import java.util.Optional;

/** Walks that had to be cut and stay cut, by the chart of the model's belief. */
final class StayingCut {

	private static final int SHOWN_DAYS = 7;

	private StayingCut() {
	}

	/**
	 * Looks for an alarm; there is none while no belief was looked up.
	 * @param course the days, with the belief of each
	 */
	static Optional<Finding> in(DogCourse course) {
		List<Double> medians = course.beliefs()
			.stream()
			.filter((day) -> !day.date().isBefore(course.medicineChangedOn()))
			.map(BeliefDay::toleranceMedian)
			.toList();
		double level = new CutChart(course.design().cutLimit()).level(medians);
		return (level >= 1) ? Optional.of(found(level, medians, course)) : Optional.empty();
	}

	private static Finding found(double level, List<Double> medians, DogCourse course) {
		int last = medians.size() - 1;
		double usual = CutChart.usual(medians, last);
		return new Finding(String.format(java.util.Locale.ROOT,
				"Walks cut and staying cut: the tolerance is put at %.0f min, %.0f min in the weeks before; signs may"
						+ " have stayed few because less was walked",
				medians.get(last), usual), level,
				course.told(SHOWN_DAYS - 1, 0)
					.stream()
					.filter((day) -> day.grade() > 0)
					.flatMap((day) -> day.evidence().stream())
					.toList());
	}

}

package measuredwalk.tolerance;

import java.time.LocalDate;
import java.util.List;

/**
 * Keeps a belief about a dog's tolerance and chooses today's walk from it. Safe for use
 * by several threads.
 */
public final class ToleranceModel {

	private final Parts parts;

	/** The model with the standard settings. */
	public ToleranceModel() {
		this(ToleranceSettings.standard());
	}

	/**
	 * The model with a clinic's own dosing rule.
	 * @param chosen the clinic's choice
	 */
	public ToleranceModel(DosingSettings chosen) {
		this(ToleranceSettings.of(chosen));
	}

	/**
	 * The model with other constants.
	 * @param settings the constants
	 */
	public ToleranceModel(ToleranceSettings settings) {
		this.parts = Parts.of(settings);
	}

	/**
	 * Today's suggestion. The same history always gives the same answer.
	 * @param history all that is known, of one dog, beginning with
	 * {@link ToleranceEvent.DogEnrolled}; days never run back
	 * @param date the day to suggest for, not before the last event's
	 * @return the suggestion
	 * @throws IllegalArgumentException when the history does not begin with the dog, or
	 * its days run back
	 */
	public Suggestion suggest(List<ToleranceEvent> history, LocalDate date) {
		return follow(history).suggest(date);
	}

	/**
	 * What-if answers for a day, in the same belief as the suggestion.
	 * @param history as for {@link #suggest}
	 * @param date as for {@link #suggest}
	 * @return the chances
	 * @throws IllegalArgumentException as {@link #suggest}
	 */
	public Chances chances(List<ToleranceEvent> history, LocalDate date) {
		return follow(history).chances(date);
	}

	/**
	 * Plans a day on which more walking is wished for: visitors, a holiday.
	 * @param history as for {@link #suggest}
	 * @param today the day of asking, not before the last event's
	 * @param day the long day, today or at most 14 days ahead
	 * @param minutes minutes wished for on it, all walks together, above 0
	 * @return how to spread it over more walks and the days around, and why so
	 * @throws IllegalArgumentException as {@link #suggest}, and when a day or the minutes
	 * are out of range
	 */
	public LongDay longDay(List<ToleranceEvent> history, LocalDate today, LocalDate day, double minutes) {
		return follow(history).longDay(today, day, minutes);
	}

	/**
	 * Facts counted from the journal that the suggestion of a day rests on.
	 * @param history as for {@link #suggest}
	 * @param date as for {@link #suggest}
	 * @param days how many days back to count, at least 1
	 * @return the evidence
	 * @throws IllegalArgumentException as {@link #suggest}
	 */
	public Evidence evidence(List<ToleranceEvent> history, LocalDate date, int days) {
		return evidence(follow(history), history, date, days);
	}

	/**
	 * The same facts for a dog that was followed already.
	 * @param course the dog's course, told of the whole history
	 * @param history as for {@link #suggest}
	 * @param date as for {@link #suggest}
	 * @param days how many days back to count, at least 1
	 * @return the evidence
	 */
	public static Evidence evidence(ToleranceCourse course, List<ToleranceEvent> history, LocalDate date, int days) {
		return EvidenceCount.of(history, course.suggest(date), days, course.pastWith(date));
	}

	/**
	 * Expected against seen signs, over the whole history.
	 * @param history as for {@link #suggest}
	 * @return the table
	 * @throws IllegalArgumentException as {@link #suggest}
	 */
	public Calibration calibration(List<ToleranceEvent> history) {
		CalibrationCount count = new CalibrationCount();
		ToleranceCourse course = follow(history.subList(0, 1));
		for (ToleranceEvent event : history.subList(1, history.size())) {
			if (event instanceof ToleranceEvent.WalkTaken walk) {
				count.add(course.chanceOfSign(walk), walk);
			}
			course.tell(event);
		}
		return count.table();
	}

	/**
	 * Follows a dog from a history on.
	 * @param history what is known so far, as for {@link #suggest}
	 * @return the dog's course, to be told of more
	 * @throws IllegalArgumentException when the history does not begin with the dog, or
	 * its days run back
	 */
	public ToleranceCourse follow(List<ToleranceEvent> history) {
		if (history.isEmpty() || !(history.get(0) instanceof ToleranceEvent.DogEnrolled enrolled)) {
			throw new IllegalArgumentException("a history begins with the dog's enrolment");
		}
		ToleranceCourse course = new ToleranceCourse(this.parts, enrolled);
		history.subList(1, history.size()).forEach(course::tell);
		return course;
	}

}

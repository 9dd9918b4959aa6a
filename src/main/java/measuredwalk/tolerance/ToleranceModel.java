package measuredwalk.tolerance;

import java.time.LocalDate;
import java.util.List;

/**
 * Keeps a belief about a dog's tolerance and chooses today's walk from it. The same
 * history always gives the same answer; what the journals of the dogs asked about last
 * came to is remembered, so that mostly only the last day has to be gone through. Safe
 * for use by several threads.
 */
public final class ToleranceModel {

	/** Enough for those whose households write at the same time. */
	private static final int REMEMBERED_DOGS = 64;

	private final Parts parts;

	private final RememberedMornings remembered;

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
		this(settings, REMEMBERED_DOGS);
	}

	/**
	 * The model with other constants.
	 * @param settings the constants
	 * @param rememberedDogs for how many dogs to remember what their journals came to
	 */
	ToleranceModel(ToleranceSettings settings, int rememberedDogs) {
		this.parts = Parts.of(settings);
		this.remembered = new RememberedMornings(rememberedDogs);
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
		ToleranceCourse course = follow(history);
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
		RememberedMornings.Remembered known = this.remembered.beginningOf(history);
		ToleranceCourse course = (known != null) ? new ToleranceCourse(this.parts, known.morning())
				: new ToleranceCourse(this.parts, enrolled);
		int from = (known != null) ? known.told().size() : 1;
		int lastDay = firstOfLastDay(history);
		if (lastDay > from) {
			history.subList(from, lastDay).forEach(course::tell);
			from = lastDay;
			this.remembered.keep(new RememberedMornings.Remembered(history.subList(0, lastDay),
					course.morningOf(history.get(lastDay).date())), known);
		}
		history.subList(from, history.size()).forEach(course::tell);
		return course;
	}

	private static int firstOfLastDay(List<ToleranceEvent> history) {
		int first = history.size() - 1;
		LocalDate lastDay = history.get(first).date();
		while (first > 0 && history.get(first - 1).date().equals(lastDay)) {
			first--;
		}
		return first;
	}

}

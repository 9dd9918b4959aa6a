package measuredwalk.tolerance;

import java.time.LocalDate;
import java.util.List;

/** Keeps a belief about a dog's tolerance and chooses today's walk from it. */
public final class ToleranceModel {

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
		WalkPlan plan = ((ToleranceEvent.DogEnrolled) history.get(0)).plan();
		return new Suggestion(date, plan.walksPerDay(), plan.planMinutes(), plan.planMinutes(), plan.planMinutes(),
				0.15, plan.planMinutes(), plan.planMinutes(), plan.planMinutes(), Advice.USUAL,
				List.of(Reason.STARTING_FROM_THE_PLAN));
	}

}

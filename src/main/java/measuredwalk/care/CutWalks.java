package measuredwalk.care;

import java.util.List;

import measuredwalk.tolerance.Advice;
import measuredwalk.tolerance.Reason;
import measuredwalk.tolerance.Suggestion;

/** Whether the walks are shorter than they were told to be before. */
final class CutWalks {

	/** Less is not seen by an owner: minutes are told in whole ones. */
	private static final double LEAST_CUT_MINUTES = 1;

	private CutWalks() {
	}

	/**
	 * Compares with what was suggested before. A dog that the clinic has to see, and one
	 * for which only the clinic decides, is left to the clinic.
	 * @param now what is suggested now
	 * @param mornings what was suggested on the last mornings, today's among them
	 * @return true on a day of easing off or of rest, and when the walks still to come
	 * are shorter
	 */
	static boolean cut(Suggestion now, List<Suggestion> mornings) {
		return switch (now.advice()) {
			case CALL_CLINIC, EMERGENCY -> false;
			case EASE_OFF, REST -> !onlyThePlan(now);
			case USUAL ->
				now.walks() > 0 && !onlyThePlan(now) && mornings.stream().anyMatch((each) -> longer(each, now));
		};
	}

	private static boolean longer(Suggestion before, Suggestion now) {
		return before.advice() == Advice.USUAL && before.minutes() - now.minutes() >= LEAST_CUT_MINUTES;
	}

	private static boolean onlyThePlan(Suggestion suggestion) {
		return suggestion.reasons().contains(Reason.ONLY_THE_PLAN_AFTER_SURGERY)
				|| suggestion.reasons().contains(Reason.ONLY_THE_PLAN_WHILE_GROWING);
	}

}

package measuredwalk.tolerance;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;

/** Puts together why a day's suggestion is what it is, most important first. */
final class ReasonsOfDay {

	static final double FLARE_LIKELY = 0.5;

	static final int RECENT_DAYS = 3;

	private static final int SILENT_DAYS = 7;

	List<Reason> of(DayPlan plan) {
		List<Reason> reasons = new ArrayList<>(plan.decision().reasons());
		Situation situation = plan.situation();
		if (reasons.contains(Reason.ONLY_THE_PLAN_AFTER_SURGERY)
				|| reasons.contains(Reason.ONLY_THE_PLAN_WHILE_GROWING)) {
			return reasons;
		}
		if (BeliefFilter.flareChance(plan.belief()) > FLARE_LIKELY) {
			reasons.add(Reason.FLARE_LIKELY);
		}
		if (hasRecentSigns(situation)) {
			reasons.add(Reason.SIGNS_ON_RECENT_WALKS);
		}
		if (situation.morning() != null && situation.morning().aboveUsual() == 1) {
			reasons.add(Reason.MORNING_A_LITTLE_WORSE);
		}
		reasons.add(source(situation));
		if (hasRecent(situation, PastDay::harder)) {
			reasons.add(Reason.HARDER_WALK_COUNTS_MORE);
		}
		return reasons;
	}

	private static Reason source(Situation situation) {
		for (int ago = 0; ago <= situation.past().size(); ago++) {
			PastDay day = situation.day(ago);
			if (situation.morning(ago) != null || (day != null && day.heard())) {
				return (ago <= SILENT_DAYS) ? Reason.LEARNED_FROM_WALKS : Reason.NOT_HEARD_FOR_LONG;
			}
		}
		return Reason.STARTING_FROM_THE_PLAN;
	}

	static boolean hasRecentSigns(Situation situation) {
		return hasRecent(situation, PastDay::signs);
	}

	private static boolean hasRecent(Situation situation, Predicate<PastDay> as) {
		for (int ago = 1; ago <= RECENT_DAYS; ago++) {
			PastDay day = situation.day(ago);
			if (day != null && as.test(day)) {
				return true;
			}
		}
		return false;
	}

}

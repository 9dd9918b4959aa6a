package measuredwalk.tolerance;

import java.util.ArrayList;
import java.util.List;

/** Puts together why a day's suggestion is what it is, most important first. */
final class ReasonsOfDay {

	static final double FLARE_LIKELY = 0.5;

	static final int RECENT_DAYS = 3;

	List<Reason> of(DayPlan plan) {
		List<Reason> reasons = new ArrayList<>(plan.decision().reasons());
		Situation situation = plan.situation();
		if (BeliefFilter.flareChance(plan.belief()) > FLARE_LIKELY) {
			reasons.add(Reason.FLARE_LIKELY);
		}
		if (hasRecentSigns(situation)) {
			reasons.add(Reason.SIGNS_ON_RECENT_WALKS);
		}
		if (situation.morning() != null && situation.morning().aboveUsual() == 1) {
			reasons.add(Reason.MORNING_A_LITTLE_WORSE);
		}
		boolean heard = situation.morning() != null || situation.past().stream().anyMatch(PastDay::heard);
		reasons.add(heard ? Reason.LEARNED_FROM_WALKS : Reason.STARTING_FROM_THE_PLAN);
		return reasons;
	}

	static boolean hasRecentSigns(Situation situation) {
		for (int ago = 1; ago <= RECENT_DAYS; ago++) {
			PastDay day = situation.day(ago);
			if (day != null && day.signs()) {
				return true;
			}
		}
		return false;
	}

}

package measuredwalk.tolerance;

/** What kind of day to make of it. */
final class AdviceOfDay {

	/** A cut under this share of yesterday's walk is worth a word. */
	private static final double CLEARLY_LESS = 0.9;

	Advice of(DayPlan plan) {
		Advice decided = plan.decision().advice();
		return (decided == Advice.USUAL && isEasier(plan)) ? Advice.EASE_OFF : decided;
	}

	private static boolean isEasier(DayPlan plan) {
		Situation situation = plan.situation();
		PastDay yesterday = situation.day(1);
		boolean signs = yesterday != null && yesterday.signs();
		boolean worse = situation.morning() != null && !situation.morning().isClear();
		boolean less = plan.decision().minutes() < CLEARLY_LESS * situation.suggested(1);
		return signs || worse || less || BeliefFilter.flareChance(plan.belief()) > ReasonsOfDay.FLARE_LIKELY;
	}

}

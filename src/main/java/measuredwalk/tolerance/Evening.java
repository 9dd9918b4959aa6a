package measuredwalk.tolerance;

import measuredwalk.tolerance.filter.PointMasses;

/**
 * All that goes over from one day to the next.
 *
 * @param belief the belief of that day's morning
 * @param facts what was told of the day's walks
 * @param walks the same in order and with carried loads
 * @param trusted the most load that a clean walk counts for in the next dose
 * @param usual the dog's usual mornings, that day's among them
 * @param check how well the chances given so far came true
 * @param past the days since enrolment, that day the last
 */
record Evening(PointMasses belief, DayFacts facts, DayWalks walks, double trusted, UsualMornings usual,
		PredictiveCheck check, PastDays past) {

	Evening withOwnPast() {
		return new Evening(this.belief, this.facts, this.walks, this.trusted, this.usual, this.check, this.past.own());
	}

	static Evening beforeEnrolment(Standing standing, Parts parts) {
		DayFacts none = DayFacts.none(standing.enrolled().date().minusDays(1));
		return new Evening(parts.filter().prior(standing.plan().planMinutes()), none, DayWalks.NONE, 0,
				UsualMornings.assumed(parts.settings().mornings()), PredictiveCheck.NONE, PastDays.none());
	}

}

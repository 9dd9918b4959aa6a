package measuredwalk.tolerance;

/**
 * Far above the plan only after the clinic has set a new one, or after the owner has
 * shown to tell of trouble, on walks or in the morning: an owner who never tells of a
 * sign lets any model climb. Signs of the last week do not count, so that a sign never
 * raises the walk of the day.
 */
record PlanCeiling(LimitSettings settings) implements Limit {

	private static final int NOT_THE_LAST_DAYS = 7;

	private static final int LOOK_BACK = 60;

	@Override
	public double most(Situation situation) {
		return hasToldOfTrouble(situation) ? NONE : this.settings.ceiling() * situation.plan().planMinutes();
	}

	private boolean hasToldOfTrouble(Situation situation) {
		int days = 0;
		for (int ago = NOT_THE_LAST_DAYS + 1; ago <= LOOK_BACK; ago++) {
			PastDay day = situation.day(ago);
			days += (day != null && day.toldOfSigns()) ? 1 : 0;
		}
		return days >= this.settings.toldBeforeCeilingLifts();
	}

	@Override
	public Reason reason() {
		return Reason.FAR_ABOVE_THE_PLAN;
	}

}

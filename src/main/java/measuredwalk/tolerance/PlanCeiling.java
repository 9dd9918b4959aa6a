package measuredwalk.tolerance;

/** Far above the plan only after the clinic has set a new one. */
record PlanCeiling(LimitSettings settings) implements Limit {

	@Override
	public double most(Situation situation) {
		return this.settings.ceiling() * situation.plan().planMinutes();
	}

	@Override
	public Reason reason() {
		return Reason.FAR_ABOVE_THE_PLAN;
	}

}

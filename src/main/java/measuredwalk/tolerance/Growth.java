package measuredwalk.tolerance;

/**
 * How fast walks may grow. To return to a length of the last two weeks is not growth. A
 * cap against yesterday or the last week alone would compound: 20 to 48 minutes in 29
 * fine days.
 */
record Growth(LimitSettings settings) implements Limit {

	@Override
	public double most(Situation situation) {
		return this.settings.raised(situation.bestSuggested(this.settings.growthFrom(), this.settings.growthTo()),
				this.settings.growth());
	}

	@Override
	public Reason reason() {
		return Reason.STEP_UP_LIMITED;
	}

}

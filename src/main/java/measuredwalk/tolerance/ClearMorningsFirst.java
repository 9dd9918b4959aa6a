package measuredwalk.tolerance;

/** No new length before some clear mornings in a row, of those that were told. */
record ClearMorningsFirst(LimitSettings settings) implements Limit {

	/** Older mornings say nothing of now. */
	private static final int LOOK_BACK = 10;

	@Override
	public double most(Situation situation) {
		int clear = 0;
		for (int ago = 0; ago < LOOK_BACK && clear < this.settings.clearMornings(); ago++) {
			MorningGrade morning = situation.morning(ago);
			if (morning != null && !morning.isClear()) {
				break;
			}
			clear += (morning != null) ? 1 : 0;
		}
		return (clear >= this.settings.clearMornings()) ? NONE : situation.bestSuggested(1, this.settings.growthTo());
	}

	@Override
	public Reason reason() {
		return Reason.WAITING_FOR_CLEAR_MORNINGS;
	}

}

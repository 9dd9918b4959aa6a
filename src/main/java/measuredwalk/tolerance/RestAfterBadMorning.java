package measuredwalk.tolerance;

/** Less, in several short walks, for some days after a bad morning. */
record RestAfterBadMorning(LimitSettings settings) implements Limit {

	private static final int FEWEST_WALKS = 2;

	private static final int MOST_WALKS = 4;

	@Override
	public double most(Situation situation) {
		Episode episode = Episode.of(situation);
		if (episode == null || episode.lastBad() >= this.settings.restDays()) {
			return NONE;
		}
		double rest = this.settings.restShare() * episode.before();
		double total = ((episode.tolerated() > 0) ? Math.min(rest, episode.tolerated()) : rest)
				* situation.plan().walksPerDay();
		return total / walks(situation.plan());
	}

	/** Walks of a rest day. */
	static int walks(WalkPlan plan) {
		return Math.max(FEWEST_WALKS, Math.min(MOST_WALKS, plan.walksPerDay()));
	}

	@Override
	public Reason reason() {
		return Reason.REST_AFTER_A_BAD_MORNING;
	}

}

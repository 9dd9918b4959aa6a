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
		return Math.min(total, yesterday(situation)) / walks(situation.plan());
	}

	/** A second bad morning on the way back never allows more than the day before. */
	private static double yesterday(Situation situation) {
		PastDay day = situation.day(1);
		return (day != null) ? day.suggestedTotal() : NONE;
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

package measuredwalk.tolerance;

/** Back by steps after rest: each needs a clear morning. */
record WayBack(LimitSettings settings) implements Limit {

	@Override
	public double most(Situation situation) {
		Episode episode = Episode.of(situation);
		if (episode == null || episode.lastBad() < this.settings.restDays() || isBack(situation, episode)) {
			return NONE;
		}
		MorningGrade morning = situation.morning();
		double yesterday = yesterday(situation);
		boolean clear = morning != null && morning.isClear();
		return clear ? this.settings.raised(yesterday, this.settings.wayBack()) : yesterday;
	}

	/** A rest day may have had more and shorter walks: its total counts. */
	private static double yesterday(Situation situation) {
		PastDay day = situation.day(1);
		return (day != null) ? day.suggestedTotal() / situation.plan().walksPerDay() : situation.suggested(1);
	}

	private static boolean isBack(Situation situation, Episode episode) {
		for (int ago = 1; ago < episode.lastBad(); ago++) {
			if (situation.suggested(ago) >= episode.before()) {
				return true;
			}
		}
		return false;
	}

	@Override
	public Reason reason() {
		return Reason.WAY_BACK_AFTER_REST;
	}

}

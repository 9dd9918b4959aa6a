package measuredwalk.tolerance;

/** What was not told is not good news: never more than yesterday after silence. */
record Silence() implements Limit {

	@Override
	public double most(Situation situation) {
		return situation.heardSinceYesterday() ? NONE : situation.suggested(1);
	}

	@Override
	public Reason reason() {
		return Reason.NOTHING_HEARD_SINCE;
	}

}

package measuredwalk.reading.quantity;

/** Turns a length in a time into a speed. */
final class Speeds {

	private Speeds() {
	}

	/**
	 * The speed unit of a length and the time whose last word ends before that index.
	 */
	static UnitPhrase of(Terms terms, Unit length, int end) {
		Unit time = terms.unit(end - 1);
		double seconds = time == null ? 0.001 : time.size();
		return new UnitPhrase(new Unit(Dimension.SPEED, length.size() / seconds, "metre a second", null), end);
	}

}

package measuredwalk.reading.quantity;

/** The k of '1.5 k' and 'half a k', which walkers say for kilometre. */
final class Kilometres {

	/** A walk in kilometres; above it a k is thousands. */
	static final double MOST = 42;

	private static final Unit UNIT = new Unit(Dimension.LENGTH, 1000, "kilometre", null);

	private Kilometres() {
	}

	/** Whether a lone letter k stands there, not joined to figures. */
	static boolean isLetter(Terms terms, int at) {
		return terms.is(at, "k") && !terms.glued(at);
	}

	static UnitPhrase at(int at) {
		return new UnitPhrase(UNIT, at + 1);
	}

}

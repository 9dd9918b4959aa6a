package measuredwalk.reading.quantity;

import org.jspecify.annotations.Nullable;

/** Reads frost: '2 below zero', '5 degrees below freezing'. */
final class BelowZero {

	private static final Unit DEGREE = new Unit(Dimension.TEMPERATURE, 1, "degree", null);

	private BelowZero() {
	}

	/**
	 * The unit of a number of degrees below zero that ends before that index, or null.
	 */
	static @Nullable UnitPhrase at(Terms terms, int at) {
		UnitPhrase degrees = Units.at(terms, at);
		boolean told = degrees != null && degrees.unit().is(Dimension.TEMPERATURE);
		int below = told && degrees != null ? degrees.end() : at;
		boolean frost = terms.is(below, "below") && (terms.is(below + 1, "zero") || terms.is(below + 1, "freezing"));
		return frost ? new UnitPhrase(told && degrees != null ? degrees.unit() : DEGREE, below + 2) : null;
	}

}

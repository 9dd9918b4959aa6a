package measuredwalk.reading.quantity;

import org.jspecify.annotations.Nullable;

/** Reads places in a row, also between two of them. */
final class Ordinals {

	private Ordinals() {
	}

	static @Nullable Match at(Terms terms, int start) {
		Bounds.Found bound = Bounds.before(terms, start);
		boolean between = terms.is(start, "between");
		int at = bound == null ? between ? start + 1 : start : bound.end();
		at = terms.is(at, "the") ? at + 1 : at;
		int end = OrdinalNumbers.end(terms, at);
		if (end == at) {
			return null;
		}
		Amount amount = Amount.of(OrdinalNumbers.value(terms, at));
		if (between) {
			return between(terms, start, amount, end);
		}
		Amount bounded = bound == null ? amount : bound.bound().applied(amount);
		return Match.of(new Ordinal(terms.span(bound == null ? at : start, end), bounded));
	}

	private static @Nullable Match between(Terms terms, int start, Amount low, int end) {
		int at = terms.is(end + 1, "the") ? end + 2 : end + 1;
		int highEnd = OrdinalNumbers.end(terms, at);
		if (!terms.is(end, "and") || highEnd == at) {
			return null;
		}
		Amount amount = Amount.between(low.value(), OrdinalNumbers.value(terms, at));
		return Match.of(new Ordinal(terms.span(start, highEnd), amount));
	}

}

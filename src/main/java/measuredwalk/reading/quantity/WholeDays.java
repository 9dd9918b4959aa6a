package measuredwalk.reading.quantity;

import org.jspecify.annotations.Nullable;

/** Reads 'all day', 'the whole week'. */
final class WholeDays {

	private WholeDays() {
	}

	static @Nullable Match at(Terms terms, int at) {
		boolean whole = terms.is(at, "all") || terms.is(at, "whole") || terms.is(at, "full") || terms.is(at, "entire");
		int name = terms.is(at + 1, "the") ? at + 2 : at + 1;
		Unit unit = whole ? terms.unit(name) : null;
		boolean day = terms.is(name, "day") || terms.is(name, "week");
		return unit == null || !day ? null
				: Match.of(new WholeDay(terms.span(at, name + 1), unit.name(), Math.round(unit.size())));
	}

}

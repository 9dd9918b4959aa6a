package measuredwalk.reading.quantity;

import java.util.ArrayList;
import java.util.List;

import org.jspecify.annotations.Nullable;

/** Gives the parts of a sum their common unit: '10 + 10 + 5 mins', '10 and 15 mins'. */
final class Sums {

	private static final double LEAST_BEFORE_AND = 5;

	private Sums() {
	}

	static List<Match> sharingUnits(Terms terms, List<Match> matches) {
		List<Match> shared = new ArrayList<>(matches);
		for (int at = shared.size() - 2; at >= 0; at--) {
			if (isLinked(terms, shared.get(at), shared.get(at + 1))) {
				share(shared, at, shared.get(at + 1).unit());
			}
		}
		for (int at = 1; at < shared.size(); at++) {
			if (terms.is(shared.get(at - 1).end(), "+") && isLinked(terms, shared.get(at - 1), shared.get(at))) {
				share(shared, at, shared.get(at - 1).unit());
			}
		}
		return shared;
	}

	/** Gives a bare number the unit, when that is one of time or length. */
	private static void share(List<Match> matches, int at, @Nullable Unit unit) {
		boolean fits = unit != null && (unit.is(Dimension.TIME) || unit.is(Dimension.LENGTH));
		if (fits && unit != null && matches.get(at).quantity() instanceof BareNumber number) {
			matches.set(at, Match.of(Kinds.in(unit, number)).in(unit));
		}
	}

	private static boolean isLinked(Terms terms, Match one, Match other) {
		boolean next = other.quantity().span().firstToken() == one.end() + 1;
		boolean and = terms.cue(one.end(), Cue.AND) && one.quantity() instanceof BareNumber number
				&& number.amount().value() >= LEAST_BEFORE_AND;
		return next && (terms.is(one.end(), "+") || and);
	}

}

package measuredwalk.reading.quantity;

import java.util.ArrayList;
import java.util.List;

/** Gives the parts of a sum their common unit: '10 + 10 + 5 mins', '10 and 15 mins'. */
final class Sums {

	private static final double LEAST_BEFORE_AND = 5;

	private Sums() {
	}

	static List<Match> sharingUnits(Terms terms, List<Match> matches) {
		List<Match> shared = new ArrayList<>(matches);
		for (int at = shared.size() - 2; at >= 0; at--) {
			Match next = shared.get(at + 1);
			boolean linked = isLinked(terms, shared.get(at), next);
			if (linked && shared.get(at).quantity() instanceof BareNumber number
					&& next.quantity() instanceof Duration duration && duration.seconds().value() >= 60) {
				shared.set(at, Match.of(new Duration(number.span(), number.amount().times(60), number.times())));
			}
		}
		for (int at = 1; at < shared.size(); at++) {
			boolean plus = terms.is(shared.get(at - 1).end(), "+")
					&& isLinked(terms, shared.get(at - 1), shared.get(at));
			if (plus && shared.get(at).quantity() instanceof BareNumber number
					&& shared.get(at - 1).quantity() instanceof Duration) {
				shared.set(at, Match.of(new Duration(number.span(), number.amount().times(60), number.times())));
			}
		}
		return shared;
	}

	private static boolean isLinked(Terms terms, Match one, Match other) {
		boolean next = other.quantity().span().firstToken() == one.end() + 1;
		boolean and = terms.cue(one.end(), Cue.AND) && one.quantity() instanceof BareNumber number
				&& number.amount().value() >= LEAST_BEFORE_AND;
		return next && (terms.is(one.end(), "+") || and);
	}

}

package measuredwalk.reading.amount;

import java.util.List;
import java.util.Set;

import measuredwalk.reading.quantity.BareNumber;
import measuredwalk.reading.quantity.Duration;
import measuredwalk.reading.words.Words;

/**
 * Numbers that are said to be wrong: '15 not 50', 'not fifteen, fifty', '45. sorry, 35'.
 */
final class Corrections {

	private static final Set<String> SORRY = Set.of("sorry", "oops", "whoops", "correction", "meant", "mean",
			"actually", "wait", "rather", "mistake", "typo", "nearer");

	private Corrections() {
	}

	static boolean isWrong(Placed placed, List<Placed> all, Words words) {
		if (!isAmount(placed) || all.stream().filter(Corrections::isAmount).count() < 2) {
			return isAmount(placed) && isOld(placed, words);
		}
		return isDenied(placed, words) || isTakenBack(placed, all, words) || isOld(placed, words);
	}

	private static boolean isAmount(Placed placed) {
		return placed.quantity() instanceof Duration || placed.quantity() instanceof BareNumber;
	}

	private static boolean isDenied(Placed placed, Words words) {
		return words.is(placed.from() - 1, "not")
				|| (words.is(placed.from() - 2, "not") && words.is(placed.from() - 1, "the"))
				|| (words.is(placed.from() - 1, "of") && words.is(placed.from() - 2, "instead"));
	}

	private static boolean isOld(Placed placed, Words words) {
		if (words.is(placed.to(), "not")) {
			return false;
		}
		for (int at = Math.max(0, placed.from() - 4); at < placed.from(); at++) {
			if (words.is(at, "disregard") || words.is(at, "ignore") || words.is(at, "previous")
					|| (words.is(at, "i") && (words.is(at + 1, "said") || words.is(at + 1, "put")
							|| words.is(at + 1, "typed") || words.is(at + 1, "wrote")))) {
				return true;
			}
		}
		return false;
	}

	/** Between this number and the next stands a word that takes it back. */
	private static boolean isTakenBack(Placed placed, List<Placed> all, Words words) {
		int next = all.indexOf(placed) + 1;
		if (next >= all.size() || !isAmount(all.get(next)) || all.get(next).from() - placed.to() > 5) {
			return false;
		}
		for (int at = placed.to(); at < all.get(next).from(); at++) {
			if (SORRY.contains(words.form(at))) {
				return true;
			}
		}
		return false;
	}

}

package measuredwalk.reading.amount;

import java.util.List;

import measuredwalk.reading.quantity.Distance;
import measuredwalk.reading.words.Words;
import org.jspecify.annotations.Nullable;

/** How far the walk was in all: there and back, or one part after the other. */
final class DistanceSum {

	private DistanceSum() {
	}

	static @Nullable Double of(List<Placed> distances, Words words) {
		if (distances.isEmpty()) {
			return null;
		}
		if (isTakenBack(distances, words)) {
			return of(distances.subList(distances.size() - 1, distances.size()), words);
		}
		Placed last = distances.get(distances.size() - 1);
		if (distances.size() > 1 && isTotal(last, words)) {
			return of(List.of(last), words);
		}
		double metres = 0;
		double unit = 0;
		for (Placed placed : distances) {
			Distance distance = (Distance) placed.quantity();
			metres += distance.metres().value() * distance.times() * TimesTold.laps(placed.from(), placed.to(), words);
			unit = distance.metres().value() / Math.max(1, figures(placed, words));
		}
		metres += wayBack(last, words) * unit;
		if (distances.size() == 1 && isThereAndBack(distances.get(0), words)) {
			metres *= 2;
		}
		return (double) Math.round(metres);
	}

	/** '1k then turned back so 2k in all'. */
	private static boolean isTotal(Placed placed, Words words) {
		int at = placed.to();
		boolean all = (words.is(at, "in") && (words.is(at + 1, "all") || words.is(at + 1, "total")))
				|| words.is(at, "total") || words.is(at, "altogether") || words.is(at, "overall");
		return all || words.is(placed.from() - 1, "total");
	}

	/** 'five miles? no, half a mile'. */
	private static boolean isTakenBack(List<Placed> distances, Words words) {
		if (distances.size() < 2) {
			return false;
		}
		for (int at = distances.get(0).to(); at < distances.get(distances.size() - 1).from(); at++) {
			if (words.is(at, "no") || words.is(at, "sorry") || words.is(at, "meant") || words.is(at, "not")) {
				return true;
			}
		}
		return false;
	}

	/** The bare number of '300 yards out, 300 back', in the unit told before. */
	private static double wayBack(Placed placed, Words words) {
		for (int at = placed.to(); at + 1 < Math.min(words.size(), placed.to() + 9); at++) {
			boolean home = words.is(at + 1, "back") || words.is(at + 1, "home");
			if (home && Character.isDigit(words.form(at).charAt(0))) {
				return number(words.form(at));
			}
		}
		return 0;
	}

	private static double figures(Placed placed, Words words) {
		for (int at = placed.from(); at < placed.to(); at++) {
			if (Character.isDigit(words.form(at).charAt(0))) {
				return number(words.form(at));
			}
		}
		return 1;
	}

	private static double number(String figures) {
		int value = 0;
		for (int at = 0; at < figures.length() && Character.isDigit(figures.charAt(at)); at++) {
			value = value * 10 + Character.digit(figures.charAt(at), 10);
		}
		return value;
	}

	private static boolean isAnd(Words words, int at) {
		return words.is(at, "and") || words.is(at, "an");
	}

	private static boolean isThereAndBack(Placed placed, Words words) {
		boolean back = false;
		for (int at = placed.to(); at < Math.min(words.size(), placed.to() + 6); at++) {
			if (words.isBreakBefore(at) || words.is(at, "total")) {
				return back && !words.is(at, "total");
			}
			back |= ((words.is(at, "back") || words.is(at, "home")) && isAnd(words, at - 1))
					|| (words.is(at, "way") && words.is(at - 1, "each"));
			if (words.is(at, "there") && words.is(at + 1, "and")) {
				return false;
			}
		}
		return back;
	}

}

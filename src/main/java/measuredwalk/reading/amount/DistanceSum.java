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
		double metres = 0;
		for (Placed placed : distances) {
			Distance distance = (Distance) placed.quantity();
			metres += distance.metres().value() * distance.times();
		}
		if (distances.size() == 1 && isThereAndBack(distances.get(0), words)) {
			metres *= 2;
		}
		return (double) Math.round(metres);
	}

	private static boolean isThereAndBack(Placed placed, Words words) {
		boolean back = false;
		for (int at = placed.to(); at < Math.min(words.size(), placed.to() + 6); at++) {
			if (words.isBreakBefore(at) || words.is(at, "total")) {
				return back && !words.is(at, "total");
			}
			back |= words.is(at, "back") && words.is(at - 1, "and") || words.is(at, "way") && words.is(at - 1, "each");
			if (words.is(at, "there") && words.is(at + 1, "and")) {
				return false;
			}
		}
		return back;
	}

}

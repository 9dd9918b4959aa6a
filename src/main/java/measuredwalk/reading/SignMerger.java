package measuredwalk.reading;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import measuredwalk.reading.observation.Observation;
import measuredwalk.signs.Severity;
import measuredwalk.signs.Sign;
import measuredwalk.signs.SignKind;
import org.jspecify.annotations.Nullable;

/**
 * Makes one sign of all that was told of the same one. What was seen beats what was
 * denied.
 */
final class SignMerger {

	private SignMerger() {
	}

	static List<Sign> merged(List<Observation> observations) {
		Map<SignKind, Sign> byKind = new LinkedHashMap<>();
		for (Observation observation : observations) {
			byKind.merge(observation.sign().kind(), observation.sign(), SignMerger::both);
		}
		return new ArrayList<>(byKind.values());
	}

	private static Sign both(Sign one, Sign other) {
		if (one.present() != other.present()) {
			return one.present() ? one : other;
		}
		return new Sign(one.kind(), one.present(), worse(one.severity(), other.severity()),
				first(one.side(), other.side()), first(one.limb(), other.limb()), first(one.when(), other.when()),
				first(one.onsetMinute(), other.onsetMinute()));
	}

	private static @Nullable Severity worse(@Nullable Severity one, @Nullable Severity other) {
		if (one == null || other == null) {
			return first(one, other);
		}
		return (one.compareTo(other) >= 0) ? one : other;
	}

	private static <T> @Nullable T first(@Nullable T one, @Nullable T other) {
		return (one != null) ? one : other;
	}

}

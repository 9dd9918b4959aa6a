package measuredwalk.reading.amount;

import java.time.Duration;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;

import measuredwalk.reading.quantity.BareNumber;
import measuredwalk.reading.quantity.ClockTime;
import measuredwalk.reading.quantity.TimeRange;

import org.jspecify.annotations.Nullable;

/** How long stiffness took to ease by the clock: 'up at 7, stiff till quarter past'. */
final class RisingTimes {

	/** Longer than this is no easing of morning stiffness. */
	private static final long MOST_MINUTES = 180;

	private static final int MOST_HOURS = 12;

	private RisingTimes() {
	}

	static @Nullable Double minutesBetween(List<Placed> placed, RoleCues cues) {
		List<LocalTime> times = new ArrayList<>();
		for (Placed each : placed) {
			if (each.quantity() instanceof ClockTime time) {
				times.add(time.said());
			}
			else if (each.quantity() instanceof TimeRange range) {
				times.add(range.from().said());
				times.add(range.till().said());
			}
			else if (each.quantity() instanceof BareNumber number && number.amount().value() <= MOST_HOURS
					&& cues.before("hour-told", each)) {
				times.add(LocalTime.of((int) number.amount().value(), 0));
			}
		}
		long minutes = (times.size() == 2) ? Math.abs(Duration.between(times.get(0), times.get(1)).toMinutes()) : 0;
		return (minutes > 0 && minutes <= MOST_MINUTES) ? Double.valueOf((double) minutes) : null;
	}

}

package measuredwalk.tolerance;

import java.util.List;
import java.util.stream.Stream;

import measuredwalk.signs.Sign;

/** Whether signs call for the clinic before any walk. */
enum Alarm {

	NONE, SAME_DAY, EMERGENCY;

	static Alarm of(DayFacts facts, boolean onMedicine) {
		List<Sign> signs = Stream
			.concat((facts.morning() != null) ? facts.morning().signs().stream() : Stream.empty(),
					facts.walks().stream().flatMap((walk) -> walk.signs().stream()))
			.toList();
		if (signs.stream().anyMatch(SignMeaning::isEmergency)) {
			return EMERGENCY;
		}
		return signs.stream().anyMatch((sign) -> SignMeaning.isSameDay(sign, onMedicine)) ? SAME_DAY : NONE;
	}

	Alarm worse(Alarm other) {
		return (compareTo(other) >= 0) ? this : other;
	}

}

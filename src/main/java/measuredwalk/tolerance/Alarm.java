package measuredwalk.tolerance;

import java.util.List;

import measuredwalk.signs.Sign;

/** Whether signs call for the clinic before any walk. */
enum Alarm {

	NONE, SAME_DAY, EMERGENCY;

	static Alarm of(DayFacts facts, boolean onMedicine) {
		Alarm alarm = (facts.morning() != null) ? of(facts.morning().signs(), onMedicine) : NONE;
		for (ToleranceEvent.WalkTaken walk : facts.walks()) {
			alarm = alarm.worse(of(walk.signs(), onMedicine));
		}
		return alarm;
	}

	private static Alarm of(List<Sign> signs, boolean onMedicine) {
		Alarm alarm = NONE;
		for (Sign sign : signs) {
			alarm = alarm.worse(SignMeaning.isEmergency(sign) ? EMERGENCY
					: SignMeaning.isSameDay(sign, onMedicine) ? SAME_DAY : NONE);
		}
		return alarm;
	}

	Alarm worse(Alarm other) {
		return (compareTo(other) >= 0) ? this : other;
	}

}

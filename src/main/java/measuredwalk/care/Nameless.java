package measuredwalk.care;

import java.time.Instant;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import measuredwalk.reading.Correction;
import measuredwalk.reading.Reading;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

/** A message that names none of several dogs, while no question waits about one. */
@Component
class Nameless {

	private final Hearing hearing;

	private final WhichDog which;

	private final WhatIf whatIf;

	private final Urgency urgency;

	private final Corrections corrections;

	private final DogTalk talk;

	private final LongDayTalk longDays;

	Nameless(Hearing hearing, WhichDog which, WhatIf whatIf, Urgency urgency, Corrections corrections, DogTalk talk,
			LongDayTalk longDays) {
		this.longDays = longDays;
		this.hearing = hearing;
		this.which = which;
		this.whatIf = whatIf;
		this.urgency = urgency;
		this.corrections = corrections;
		this.talk = talk;
	}

	void hear(List<Turn> dogs, Reply reply) {
		Map<Turn, Reading> readings = new LinkedHashMap<>();
		dogs.forEach((turn) -> readings.put(turn, this.hearing.read(turn)));
		Map.Entry<Turn, Reading> worst = readings.entrySet()
			.stream()
			.max(Comparator.comparing((Map.Entry<Turn, Reading> each) -> each.getValue().level()))
			.orElseThrow();
		if (Urgency.cannotWait(worst.getValue())) {
			this.urgency.answerForOneOf(dogs, worst.getKey(), worst.getValue(), reply);
			this.which.ask(dogs, true, reply);
		}
		else if (!dogs.get(0).carer().silenced()) {
			hear(dogs, readings.get(dogs.get(0)), reply);
		}
	}

	private void hear(List<Turn> dogs, Reading reading, Reply reply) {
		if (corrected(dogs, reading, reply)) {
			return;
		}
		if (reading.correction() != null || brings(reading) || this.whatIf.asks(dogs.get(0))
				|| this.longDays.wish(dogs.get(0)).isPresent()) {
			this.which.ask(dogs, true, reply);
		}
		else {
			this.talk.converse(dogs.get(0), reading, null, reply);
		}
	}

	private static boolean brings(Reading reading) {
		return !reading.walks().isEmpty() || !reading.signs().isEmpty() || reading.overall() != null
				|| reading.stiffMinutes() != null || reading.noWalk();
	}

	/**
	 * 'No, 15 not 25' puts right what was told last; of each dog when the same message
	 * told of both.
	 */
	boolean corrected(List<Turn> dogs, Reading reading, Reply reply) {
		Correction correction = reading.correction();
		if (correction == null) {
			return false;
		}
		List<Turn> about = toldLast(dogs, correction.wrongMinutes());
		about.forEach((turn) -> this.talk.corrected(turn, correction, null, reply));
		return !about.isEmpty();
	}

	private List<Turn> toldLast(List<Turn> dogs, @Nullable Double wrong) {
		Optional<Instant> last = dogs.stream()
			.flatMap((turn) -> this.corrections.lastTold(turn).stream())
			.max(Comparator.naturalOrder());
		List<Turn> about = dogs.stream()
			.filter((turn) -> last.isPresent() && last.equals(this.corrections.lastTold(turn)))
			.filter((turn) -> wrong == null || this.corrections.told(turn, wrong))
			.toList();
		return (wrong == null && about.size() > 1) ? List.of() : about;
	}

}

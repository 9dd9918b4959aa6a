package measuredwalk.care;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;

import measuredwalk.conversations.Part;
import measuredwalk.conversations.Phrase;
import measuredwalk.conversations.Replies;
import measuredwalk.escalation.AlertLevel;
import measuredwalk.escalation.Alerts;
import measuredwalk.escalation.Evidence;
import measuredwalk.reading.Level;
import measuredwalk.reading.OwnerMessage;
import measuredwalk.reading.Reading;
import measuredwalk.signs.Sign;
import measuredwalk.signs.SignKind;
import measuredwalk.speech.Speaking;
import org.springframework.stereotype.Component;

/** Answers a message that cannot wait, before anything else, and tells the clinic. */
@Component
class Urgency {

	/**
	 * On an anti-inflammatory these mean: give no more until the clinic has spoken (FDA
	 * advice to owners on such medicines, in own words).
	 */
	private static final Set<SignKind> STOP_SIGNS = Set.of(SignKind.INAPPETENCE, SignKind.VOMITING, SignKind.DIARRHOEA,
			SignKind.MELAENA, SignKind.LETHARGY, SignKind.POLYDIPSIA, SignKind.JAUNDICE);

	private static final String ANTI_INFLAMMATORY = "nsaid";

	private final Alerts alerts;

	private final ClinicCall call;

	private final EntryWords words;

	private final Replies replies;

	private final Figures figures;

	Urgency(Alerts alerts, ClinicCall call, EntryWords words, Replies replies, Figures figures) {
		this.replies = replies;
		this.figures = figures;
		this.alerts = alerts;
		this.call = call;
		this.words = words;
	}

	static boolean cannotWait(Reading reading) {
		return reading.level().compareTo(Level.SAME_DAY) >= 0;
	}

	void answer(Turn turn, Reading reading, Reply reply) {
		answer(turn.dog().name(), reading, reply);
		if (onAntiInflammatory(turn) && reading.signs().stream().anyMatch(Urgency::stopSign)) {
			reply.say(Phrase.HOLD_MEDICINE);
		}
		this.alerts.raise(turn.dog().id(), level(reading), reason(reading), evidence(turn));
	}

	private static AlertLevel level(Reading reading) {
		return (reading.level() == Level.EMERGENCY) ? AlertLevel.EMERGENCY : AlertLevel.SAME_DAY;
	}

	/**
	 * It is not told yet which of several dogs is meant, and nobody waits for that: each
	 * household gets one alert, which says so.
	 */
	void answerForOneOf(List<Turn> dogs, Turn worst, Reading reading, Reply reply) {
		answer(this.figures.or(worst.allNames()), reading, reply);
		if (onAntiInflammatory(worst) && reading.signs().stream().anyMatch(Urgency::stopSign)) {
			reply.say(Phrase.HOLD_MEDICINE);
		}
		String reason = this.figures.or(worst.allNames()) + ", it is not told yet which: " + reason(reading);
		Map<UUID, Turn> byHome = new LinkedHashMap<>();
		byHome.put(worst.dog().household().id(), worst);
		dogs.forEach((turn) -> byHome.putIfAbsent(turn.dog().household().id(), turn));
		byHome.values().forEach((turn) -> this.alerts.raise(turn.dog().id(), level(reading), reason, evidence(turn)));
	}

	/** For somebody who belongs to no household yet: the number, and nothing stored. */
	void answer(String dogName, Reading reading, Reply reply) {
		Phrase phrase = (reading.level() == Level.EMERGENCY) ? Phrase.EMERGENCY : Phrase.SAME_DAY;
		reply.say(phrase, Map.of("dog", dogName, "phone", this.call.phone(), "what", what(reading)));
	}

	void review(Turn turn, String reason) {
		this.alerts.raise(turn.dog().id(), AlertLevel.REVIEW, reason, evidence(turn));
	}

	private static Evidence evidence(Turn turn) {
		return new Evidence(turn.message().text(), turn.message().receivedAt(), turn.carer().name());
	}

	private static boolean onAntiInflammatory(Turn turn) {
		return turn.dog().medications().contains(ANTI_INFLAMMATORY);
	}

	private static boolean stopSign(Sign sign) {
		return sign.present() && STOP_SIGNS.contains(sign.kind());
	}

	/** For the owner: what was read, in everyday words. */
	private String what(Reading reading) {
		List<String> signs = reading.signs().stream().filter(Sign::present).map(this.words::sign).toList();
		if (!signs.isEmpty()) {
			return String.join(", ", signs);
		}
		boolean english = Speaking.now().language().equals(OwnerMessage.ENGLISH);
		return (reading.levelReasons().isEmpty() || !english) ? this.replies.part(Part.SOMETHING_SERIOUS)
				: reading.levelReasons().get(0);
	}

	/** For the clinic: the rule that it meets, in words of the trade. */
	private String reason(Reading reading) {
		return reading.levelReasons().isEmpty() ? what(reading) : reading.levelReasons().get(0);
	}

}

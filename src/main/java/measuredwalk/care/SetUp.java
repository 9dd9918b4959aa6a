package measuredwalk.care;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;

import measuredwalk.conversations.CheckIn;
import measuredwalk.conversations.CheckIns;
import measuredwalk.conversations.Part;
import measuredwalk.conversations.Phrase;
import measuredwalk.conversations.Prompt;
import measuredwalk.conversations.Replies;
import measuredwalk.conversations.Slot;
import measuredwalk.household.Enrolment;
import measuredwalk.household.Households;
import measuredwalk.household.NewDog;
import measuredwalk.messaging.IncomingMessage;
import measuredwalk.prompts.Prompts;
import measuredwalk.reading.Reading;
import org.jspecify.annotations.Nullable;
import measuredwalk.speech.Speaking;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.stereotype.Component;

/**
 * Begins without a clinic: the dog's name and its present habit are all that is asked.
 */
@Component
class SetUp {

	private static final String NAME = "name";

	private static final int LONGEST_NAME = 40;

	/** Nothing known: walks of 10 minutes (clinical rules, clinic handouts). */
	private static final double MINUTES_WHEN_UNKNOWN = 10;

	private static final double LEAST_HABIT = 5;

	private static final double MOST_HABIT = 60;

	private final CheckIns checkIns;

	private final Households households;

	private final Prompts prompts;

	private final ClinicCall call;

	private final ZoneId timeZone;

	private final Replies replies;

	private final Figures figures;

	SetUp(CheckIns checkIns, Households households, Prompts prompts, ClinicCall call, Replies replies, Figures figures,
			@Value("${measuredwalk.time-zone:Europe/London}") ZoneId timeZone) {
		this.checkIns = checkIns;
		this.replies = replies;
		this.figures = figures;
		this.households = households;
		this.prompts = prompts;
		this.call = call;
		this.timeZone = timeZone;
	}

	void begin(IncomingMessage message, Reply reply) {
		LocalDate today = LocalDate.ofInstant(message.receivedAt(), this.timeZone);
		CheckIn checkIn = this.checkIns.open(message.chatId(), null, CheckIns.WELCOME, today);
		next(checkIn, Set.of(), "", reply);
	}

	void take(IncomingMessage message, Reading reading, Reply reply) {
		Optional<CheckIn> open = this.checkIns.current(message.chatId())
			.filter((checkIn) -> checkIn.conversation().equals(CheckIns.WELCOME));
		if (open.isEmpty()) {
			reply.say(Phrase.HOW_TO_BEGIN);
		}
		else if (open.get().asked().contains(Slot.DOG_NAME)) {
			takeName(open.get(), message, reply);
		}
		else {
			takeHabit(open.get(), message, reading, reply);
		}
	}

	private void takeName(CheckIn open, IncomingMessage message, Reply reply) {
		String name = message.text().strip();
		boolean plausible = name.length() <= LONGEST_NAME && name.codePoints().anyMatch(Character::isLetter)
				&& name.split("\\s+").length <= 3;
		if (plausible) {
			this.checkIns.remember(open.id(), NAME, name);
		}
		next(open, plausible ? Set.of(Slot.DOG_NAME) : Set.of(), plausible ? name : this.replies.part(Part.YOUR_DOG),
				reply);
	}

	private void takeHabit(CheckIn open, IncomingMessage message, Reading reading, Reply reply) {
		Double minutes = reading.walks().isEmpty() ? null : reading.walks().get(0).minutes();
		Set<Slot> settled = (minutes != null) ? Set.of(Slot.USUAL_MINUTES) : Set.of();
		String name = Objects.requireNonNullElse(open.remembered().get(NAME), this.replies.part(Part.YOUR_DOG));
		if (!next(open, settled, name, reply)) {
			enrol(message, name, minutes, reply);
		}
	}

	private boolean next(CheckIn open, Set<Slot> settled, String name, Reply reply) {
		Optional<Prompt> prompt = this.checkIns.next(open.id(), settled, Set.of(), Map.of("dog", name));
		prompt.ifPresent(reply::ask);
		return prompt.isPresent();
	}

	private void enrol(IncomingMessage message, String name, @Nullable Double minutes, Reply reply) {
		double habit = Math.min(MOST_HABIT,
				Math.max(LEAST_HABIT, Objects.requireNonNullElse(minutes, MINUTES_WHEN_UNKNOWN)));
		Enrolment enrolment = this.households.enrol(
				new NewDog(name, null, null, true, null, this.timeZone, habit, null, null, null, List.of(), List.of()),
				message.senderName());
		this.households.speak(enrolment.dog().household().id(), Speaking.now());
		this.households.join(enrolment.joinCode(), message.chatId(), message.senderName());
		this.prompts.expect(enrolment.dog());
		reply.say(Phrase.GREETING, Map.of("dog", name));
		reply.say(Phrase.BEGUN_WITHOUT_CLINIC, Map.of("dog", name, "walks",
				this.figures.walks(enrolment.dog().plan().walksPerDay()), "minutes", this.figures.minutes(habit)));
		reply.say(this.call.whomToCall(name));
	}

}

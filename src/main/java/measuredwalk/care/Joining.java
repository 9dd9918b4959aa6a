package measuredwalk.care;

import java.util.Map;
import java.util.Optional;

import measuredwalk.conversations.CheckIns;
import measuredwalk.conversations.Phrase;
import measuredwalk.escalation.StaffChats;
import measuredwalk.household.Carer;
import measuredwalk.household.Dog;
import measuredwalk.household.Households;
import measuredwalk.household.JoinOutcome;
import measuredwalk.messaging.IncomingMessage;
import measuredwalk.prompts.Prompts;
import org.springframework.stereotype.Component;

/** {@code /start}, with a code or without. */
@Component
class Joining {

	private final Households households;

	private final StaffChats staffChats;

	private final CheckIns checkIns;

	private final Prompts prompts;

	private final SetUp setUp;

	private final ClinicCall call;

	Joining(Households households, StaffChats staffChats, CheckIns checkIns, Prompts prompts, SetUp setUp,
			ClinicCall call) {
		this.households = households;
		this.staffChats = staffChats;
		this.checkIns = checkIns;
		this.prompts = prompts;
		this.setUp = setUp;
		this.call = call;
	}

	void start(IncomingMessage message, String code, Optional<Carer> carer, Reply reply) {
		if (!code.isEmpty()) {
			join(message, code, reply);
		}
		else if (carer.isPresent()) {
			this.households.speakAgain(message.chatId());
			reply.say(Phrase.STARTED_AGAIN, Map.of("dog", dogOf(carer.get()).name()));
		}
		else {
			this.setUp.begin(message, reply);
		}
	}

	private void join(IncomingMessage message, String code, Reply reply) {
		if (this.staffChats.join(code, message.chatId())) {
			reply.say(Phrase.STAFF_JOINED);
			return;
		}
		JoinOutcome outcome = this.households.join(code, message.chatId(), message.senderName());
		switch (outcome) {
			case JOINED -> welcome(message, reply);
			case BACK_AGAIN -> reply.say(Phrase.BACK_AGAIN, Map.of("dog", dogIn(message).name()));
			case UNKNOWN_CODE -> reply.say(Phrase.UNKNOWN_CODE);
			case EXPIRED_CODE -> reply.say(Phrase.EXPIRED_CODE);
		}
	}

	private void welcome(IncomingMessage message, Reply reply) {
		Dog dog = dogIn(message);
		this.checkIns.close(message.chatId());
		this.prompts.expect(dog);
		greet(dog, reply);
		reply.say(Phrase.JOINED, Map.of("dog", dog.name()));
	}

	/** What this is and is not, the plan, and whom to call. */
	void greet(Dog dog, Reply reply) {
		reply.say(Phrase.GREETING, Map.of("dog", dog.name()));
		reply.say(Phrase.PLAN, Map.of("dog", dog.name(), "walks", Figures.walks(dog.plan().walksPerDay()), "minutes",
				Figures.minutes(dog.plan().planMinutes())));
		reply.say(this.call.whomToCall(dog.name()));
	}

	private Dog dogIn(IncomingMessage message) {
		return dogOf(this.households.carerIn(message.chatId()).orElseThrow());
	}

	private Dog dogOf(Carer carer) {
		return this.households.dogsOf(carer.householdId()).get(0);
	}

}

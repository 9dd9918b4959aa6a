package measuredwalk.care;

import java.util.List;
import java.util.Map;

import measuredwalk.conversations.CheckIns;
import measuredwalk.conversations.Phrase;
import measuredwalk.escalation.StaffChats;
import measuredwalk.household.Dog;
import measuredwalk.household.Households;
import measuredwalk.household.JoinOutcome;
import measuredwalk.messaging.IncomingMessage;
import measuredwalk.prompts.Prompts;
import measuredwalk.speech.Speaking;
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

	private final EarlierDogs earlierDogs;

	private final CodeTries tries;

	private final Figures figures;

	private final SpeechTalk speech;

	Joining(Households households, StaffChats staffChats, CheckIns checkIns, Prompts prompts, SetUp setUp,
			ClinicCall call, EarlierDogs earlierDogs, CodeTries tries, Figures figures, SpeechTalk speech) {
		this.speech = speech;
		this.figures = figures;
		this.tries = tries;
		this.households = households;
		this.staffChats = staffChats;
		this.checkIns = checkIns;
		this.prompts = prompts;
		this.setUp = setUp;
		this.call = call;
		this.earlierDogs = earlierDogs;
	}

	void start(IncomingMessage message, String code, List<Turn> dogs, Reply reply) {
		if (!code.isEmpty()) {
			join(message, code, reply);
		}
		else if (!dogs.isEmpty()) {
			this.households.speakAgain(message.chatId());
			reply.say(Phrase.STARTED_AGAIN, Map.of("dog", and(dogs.stream().map(Turn::dog).toList())));
		}
		else {
			this.setUp.begin(message, reply);
			this.speech.offer(message.chatId(), reply);
		}
	}

	private void join(IncomingMessage message, String code, Reply reply) {
		if (this.tries.tooMany(message)) {
			reply.say(Phrase.TOO_MANY_CODES);
			return;
		}
		if (this.staffChats.join(code, message.chatId())) {
			reply.say(Phrase.STAFF_JOINED);
			return;
		}
		JoinOutcome outcome = this.households.join(code, message.chatId(), message.senderName());
		switch (outcome) {
			case JOINED -> welcome(message, reply);
			case BACK_AGAIN -> reply.say(Phrase.BACK_AGAIN, Map.of("dog", and(dogsIn(message))));
			case UNKNOWN_CODE -> reply.say(Phrase.UNKNOWN_CODE);
			case EXPIRED_CODE -> reply.say(Phrase.EXPIRED_CODE);
		}
	}

	private void welcome(IncomingMessage message, Reply reply) {
		Speaking.change(this.speech.speechOf(message.chatId()));
		List<Dog> dogs = dogsIn(message);
		this.checkIns.close(message.chatId());
		dogs.forEach(this.prompts::expect);
		greet(dogs, reply);
		reply.say(Phrase.JOINED, Map.of("dog", and(dogs)));
		this.earlierDogs.ask(message.chatId(), dogs, reply);
		this.speech.offer(message.chatId(), reply);
	}

	/** What this is and is not, the plan, and whom to call. */
	private void greet(List<Dog> dogs, Reply reply) {
		reply.say(Phrase.GREETING, Map.of("dog", and(dogs)));
		dogs.forEach((dog) -> reply.say(Phrase.PLAN,
				Map.of("dog", dog.name(), "walks", this.figures.walks(dog.plan().walksPerDay()), "minutes",
						this.figures.minutes(dog.plan().planMinutes()))));
		reply.say(this.call.whomToCall(this.figures.or(dogs.stream().map(Dog::name).toList())));
	}

	private String and(List<Dog> dogs) {
		return this.figures.and(dogs.stream().map(Dog::name).toList());
	}

	private List<Dog> dogsIn(IncomingMessage message) {
		return this.households.dogsOf(this.households.carerIn(message.chatId()).orElseThrow().householdId());
	}

}

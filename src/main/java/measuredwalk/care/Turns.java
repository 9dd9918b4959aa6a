package measuredwalk.care;

import java.util.ArrayList;
import java.util.List;

import measuredwalk.household.Carer;
import measuredwalk.household.Dog;
import measuredwalk.household.Households;
import measuredwalk.messaging.IncomingMessage;
import org.springframework.stereotype.Component;

/** The dogs that a chat is about. */
@Component
class Turns {

	private final Households households;

	Turns(Households households) {
		this.households = households;
	}

	/** The message as one about each dog in turn; empty when the chat has no dog. */
	List<Turn> of(IncomingMessage message) {
		List<Dog> dogs = new ArrayList<>();
		List<Carer> carers = new ArrayList<>();
		for (Carer carer : this.households.carersIn(message.chatId())) {
			for (Dog dog : this.households.dogsOf(carer.householdId())) {
				dogs.add(dog);
				carers.add(carer);
			}
		}
		List<Turn> turns = new ArrayList<>();
		for (int index = 0; index < dogs.size(); index++) {
			turns.add(new Turn(message, carers.get(index), dogs.get(index), dogs, message.text()));
		}
		return turns;
	}

	/** What each dog is called here: two of one name are told apart by a number. */
	static List<String> names(List<Turn> turns) {
		List<String> names = new ArrayList<>();
		for (Turn turn : turns) {
			String name = turn.dog().name();
			boolean alone = turns.stream().filter((each) -> each.dog().name().equalsIgnoreCase(name)).count() == 1;
			names.add(alone ? name : name + " " + (names.size() + 1));
		}
		return names;
	}

}

package measuredwalk.care;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.List;

import measuredwalk.household.Carer;
import measuredwalk.household.Dog;
import measuredwalk.journal.Said;
import measuredwalk.journal.Teller;
import measuredwalk.messaging.IncomingMessage;
import measuredwalk.speech.Speech;

/**
 * What one message of a carer says about one dog.
 *
 * @param message the message
 * @param carer who wrote it, as one of the dog's household
 * @param dog the dog that it is about
 * @param dogs all dogs that are written about in this chat
 * @param text what of the message is about this dog
 */
record Turn(IncomingMessage message, Carer carer, Dog dog, List<Dog> dogs, String text) {

	Turn {
		dogs = List.copyOf(dogs);
	}

	Turn saying(String words) {
		return new Turn(this.message, this.carer, this.dog, this.dogs, words);
	}

	/** The same of another dog of the household. */
	Turn about(Dog another) {
		return new Turn(this.message, this.carer, another, this.dogs, this.text);
	}

	long chatId() {
		return this.message.chatId();
	}

	/** With several dogs the name stands before what is said of one. */
	String named(String words) {
		return (this.dogs.size() > 1) ? this.dog.name() + ": " + words : words;
	}

	/** The names of all dogs that are written about in this chat. */
	List<String> allNames() {
		return this.dogs.stream().map(Dog::name).toList();
	}

	/** How the dog's household is spoken to. */
	Speech speech() {
		return this.dog.household().speech();
	}

	/**
	 * The words about this dog in the English that answers are looked for in, whatever
	 * language they are in.
	 */
	String english() {
		return Ears.english(this.text, speech(), allNames());
	}

	/** All dogs of this dog's household. */
	List<Dog> home() {
		return this.dogs.stream().filter((each) -> each.household().id().equals(this.dog.household().id())).toList();
	}

	/** The names of all dogs of this dog's household. */
	List<String> homeNames() {
		return home().stream().map(Dog::name).toList();
	}

	ZoneId zone() {
		return this.dog.household().timeZone();
	}

	/** The message's own time in the household's zone. */
	LocalDateTime time() {
		return LocalDateTime.ofInstant(this.message.receivedAt(), zone());
	}

	LocalDate today() {
		return time().toLocalDate();
	}

	Teller teller() {
		return new Teller(this.carer.id(), this.carer.name());
	}

	Said said() {
		return new Said(this.message.text(), this.message.receivedAt(), this.carer.name());
	}

}

package measuredwalk.care;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;

import measuredwalk.household.Carer;
import measuredwalk.household.Dog;
import measuredwalk.journal.Said;
import measuredwalk.journal.Teller;
import measuredwalk.messaging.IncomingMessage;

/**
 * One message of a carer about a dog.
 *
 * @param message the message
 * @param carer who wrote it
 * @param dog the dog that it is about
 */
record Turn(IncomingMessage message, Carer carer, Dog dog) {

	long chatId() {
		return this.message.chatId();
	}

	String text() {
		return this.message.text();
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

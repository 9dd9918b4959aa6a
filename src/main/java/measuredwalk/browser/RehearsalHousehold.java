package measuredwalk.browser;

import java.time.LocalTime;
import java.time.ZoneId;
import java.util.List;

import measuredwalk.household.Enrolment;
import measuredwalk.household.Households;
import measuredwalk.household.NewDog;
import measuredwalk.messaging.Chats;
import measuredwalk.messaging.Inbox;
import org.springframework.boot.ApplicationArguments;
import org.springframework.boot.ApplicationRunner;
import org.springframework.boot.autoconfigure.condition.ConditionalOnBooleanProperty;
import org.springframework.stereotype.Component;

/**
 * Takes on an invented dog when there is none yet, and lets its people join by code, as
 * any household does.
 */
@Component
@ConditionalOnBooleanProperty("measuredwalk.rehearsal")
class RehearsalHousehold implements ApplicationRunner {

	private static final String MADE_BY = "rehearsal";

	private final Households households;

	private final Chats chats;

	private final Inbox inbox;

	RehearsalHousehold(Households households, Chats chats, Inbox inbox) {
		this.households = households;
		this.chats = chats;
		this.inbox = inbox;
	}

	@Override
	public void run(ApplicationArguments arguments) {
		if (!this.households.dogs().isEmpty()) {
			return;
		}
		Enrolment thistle = this.households
			.enrol(new NewDog("Thistle", 23.0, 11.0, true, null, ZoneId.of("Europe/London"), 20, 2, 6.0, 40.0,
					List.of(LocalTime.of(8, 0), LocalTime.of(17, 30)), List.of("nsaid")), MADE_BY);
		join(RehearsalPerson.WREN, thistle.joinCode());
		join(RehearsalPerson.ALDER, this.households.shareCode(thistle.dog().household().id(), MADE_BY));
	}

	private void join(RehearsalPerson person, String code) {
		this.inbox.receive(this.chats.at(BrowserChannel.NAME, person.address()), "join-" + person.address(),
				person.shownName(), "/start " + code);
	}

}

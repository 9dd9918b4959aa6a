package measuredwalk.care;

import java.time.Clock;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.Map;
import java.util.Objects;
import java.util.Set;

import measuredwalk.conversations.CheckIn;
import measuredwalk.conversations.CheckIns;
import measuredwalk.conversations.Phrase;
import measuredwalk.conversations.Prompt;
import measuredwalk.conversations.Replies;
import measuredwalk.household.Carer;
import measuredwalk.household.Dog;
import measuredwalk.household.Hours;
import measuredwalk.household.Households;
import measuredwalk.journal.Journal;
import measuredwalk.speech.Speaking;
import org.springframework.stereotype.Component;

/**
 * The one reminder of a question that nobody answered: to the other carer if there is
 * one, otherwise to the same again; the same day, outside the quiet hours, and only while
 * nobody told.
 */
@Component
class Reminder {

	private final Households households;

	private final Journal journal;

	private final CheckIns checkIns;

	private final WhomToAsk whom;

	private final WalkHours walkHours;

	private final Asking asking;

	private final Replies replies;

	private final Clock clock;

	Reminder(Households households, Journal journal, CheckIns checkIns, WhomToAsk whom, WalkHours walkHours,
			Asking asking, Replies replies, Clock clock) {
		this.households = households;
		this.journal = journal;
		this.checkIns = checkIns;
		this.whom = whom;
		this.walkHours = walkHours;
		this.asking = asking;
		this.replies = replies;
		this.clock = clock;
	}

	void remind(CheckIn open) {
		Dog dog = this.households.dog(Objects.requireNonNull(open.dogId())).orElseThrow();
		if (welcome(dog, open) && !told(dog, open)) {
			Speaking.as(dog.household().speech(),
					() -> this.whom.next(dog, open.chatId()).ifPresent((carer) -> remind(dog, open, carer)));
		}
	}

	private boolean welcome(Dog dog, CheckIn open) {
		LocalDateTime now = LocalDateTime.ofInstant(this.clock.instant(), dog.household().timeZone());
		LocalDate today = now.toLocalDate();
		Hours hours = dog.household().hours();
		return today.equals(open.aboutDate()) && !hours.offOn(today) && !hours.quietAt(now.toLocalTime());
	}

	private boolean told(Dog dog, CheckIn open) {
		if (open.conversation().equals(CheckIns.NEXT_MORNING)) {
			return this.journal.morningOf(dog.id(), open.aboutDate()).isPresent();
		}
		String hour = open.remembered().get(WalkHours.ASKED_FOR);
		return hour != null && this.walkHours.toldOf(dog, open.aboutDate(), LocalTime.parse(hour));
	}

	private void remind(Dog dog, CheckIn open, Carer carer) {
		String cause = "reminder/" + open.id();
		if (carer.chatId() == open.chatId()) {
			boolean morning = open.conversation().equals(CheckIns.NEXT_MORNING);
			Map<String, String> places = Map.of("dog", dog.name());
			String words = this.replies.say(morning ? Phrase.REMINDER_MORNING : Phrase.REMINDER_WALK, places);
			this.checkIns.waiting(open.id(), places)
				.ifPresent((waiting) -> this.asking.send(open.chatId(), cause, new Prompt(words, waiting.choices())));
		}
		else if (!this.asking.waits(carer)) {
			this.checkIns.close(open.chatId());
			CheckIn moved = this.asking.ask(dog, carer, open.conversation(), open.aboutDate(), Set.of(), cause);
			open.remembered().forEach((key, fact) -> this.checkIns.remember(moved.id(), key, fact));
		}
	}

}

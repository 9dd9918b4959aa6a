package measuredwalk.care;

import java.time.Clock;
import java.time.Duration;
import java.time.LocalDate;
import java.util.Map;
import java.util.Set;

import measuredwalk.conversations.CheckIn;
import measuredwalk.conversations.CheckIns;
import measuredwalk.conversations.Prompt;
import measuredwalk.conversations.Replies;
import measuredwalk.conversations.Slot;
import measuredwalk.household.Carer;
import measuredwalk.household.Dog;
import measuredwalk.messaging.Outbox;
import measuredwalk.prompts.Prompts;
import org.springframework.stereotype.Component;

/** Begins a check-in that nobody asked for. */
@Component
class Asking {

	/**
	 * When a question that waits is reminded of, once: one reminder helps (Thakkar 2016),
	 * two are nagging. After how long is common practice, no source.
	 */
	private static final Duration REMIND_AFTER = Duration.ofHours(2);

	private final CheckIns checkIns;

	private final Outbox outbox;

	private final Replies replies;

	private final Prompts prompts;

	private final Clock clock;

	Asking(CheckIns checkIns, Outbox outbox, Replies replies, Prompts prompts, Clock clock) {
		this.checkIns = checkIns;
		this.outbox = outbox;
		this.replies = replies;
		this.prompts = prompts;
		this.clock = clock;
	}

	/**
	 * Asks the first question of a check-in.
	 * @param settled what is not to be asked
	 * @param cause why, unique for each time that it is due
	 */
	CheckIn ask(Dog dog, Carer carer, String conversation, LocalDate date, Set<Slot> settled, String cause) {
		CheckIn checkIn = this.checkIns.open(carer.chatId(), dog.id(), conversation, date);
		this.checkIns.next(checkIn.id(), settled, Set.of(), Map.of("dog", dog.name()))
			.ifPresent((prompt) -> send(carer.chatId(), cause, prompt));
		return checkIn;
	}

	void remindLater(CheckIn checkIn) {
		this.prompts.remind(checkIn.id(), this.clock.instant().plus(REMIND_AFTER));
	}

	void send(long chatId, String cause, Prompt prompt) {
		new Reply(this.outbox, this.replies, chatId, cause).ask(prompt);
	}

	/**
	 * Whether a question waits in a chat that may not be pushed aside, as the weekly one
	 * may.
	 */
	boolean waits(Carer carer) {
		return this.checkIns.current(carer.chatId())
			.filter((open) -> !open.asked().isEmpty() && !open.conversation().equals(CheckIns.WEEKLY))
			.isPresent();
	}

}

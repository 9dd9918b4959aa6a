package measuredwalk.care;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;

import measuredwalk.conversations.Phrase;
import measuredwalk.conversations.Replies;
import measuredwalk.escalation.AlertLevel;
import measuredwalk.escalation.Alerts;
import measuredwalk.household.Carer;
import measuredwalk.household.Dog;
import measuredwalk.household.Households;
import measuredwalk.messaging.Outbox;
import measuredwalk.messaging.OutgoingMessage;
import org.springframework.stereotype.Component;

/**
 * The picture of the fortnight that comes by itself, to everybody at home. It asks
 * nothing, so it does not wait for a question that waits.
 */
@Component
class SundayPicture {

	private static final String KIND = "fortnight/";

	private static final String SENDING = "(?:stop|end|don['\u2019]?t|do not|no more|no|without)";

	private static final String NAMED = "(?:(?:the|these|those|this|that|any|sunday|weekly|fortnight|more|of)\\s+)*";

	/** All of a message, as pictures may be talked of for other reasons. */
	private static final Pattern NO_MORE = Pattern.compile(
			"(?:please\\s+)?(?:can you\\s+)?" + SENDING
					+ "\\s+(?:(?:send|sending|show|showing|want|need)\\s+)?(?:(?:me|us)\\s+)?" + NAMED + "pictures?"
					+ "(?:\\s+(?:any ?more|on sundays?|again|please|thanks|thank you))*[\\s.!]*",
			Pattern.CASE_INSENSITIVE);

	/** So long nobody wants figures of an ill dog unasked: common practice, no source. */
	private static final int DAYS_AFTER_ALERT = 3;

	private final Fortnight fortnight;

	private final Alerts alerts;

	private final WhomToAsk whom;

	private final Households households;

	private final Outbox outbox;

	private final Replies replies;

	SundayPicture(Fortnight fortnight, Alerts alerts, WhomToAsk whom, Households households, Outbox outbox,
			Replies replies) {
		this.fortnight = fortnight;
		this.alerts = alerts;
		this.whom = whom;
		this.households = households;
		this.outbox = outbox;
		this.replies = replies;
	}

	/** Sends it, unless nothing was told in that time or the dog was poorly just now. */
	void send(Dog dog, LocalDate date) {
		if (!poorly(dog, date)) {
			this.fortnight.shown(dog, date)
				.ifPresent((message) -> this.whom.everybody(dog).forEach((carer) -> write(dog, date, carer, message)));
		}
	}

	private boolean poorly(Dog dog, LocalDate date) {
		Instant lately = date.minusDays(DAYS_AFTER_ALERT).atStartOfDay(dog.household().timeZone()).toInstant();
		return this.alerts.of(dog.id())
			.stream()
			.anyMatch((alert) -> alert.level() != AlertLevel.REVIEW && alert.raisedAt().isAfter(lately));
	}

	private void write(Dog dog, LocalDate date, Carer carer, OutgoingMessage message) {
		boolean first = this.outbox.lastText(List.of(carer.chatId()), KIND + dog.id()).isEmpty();
		String text = first ? message.text() + " " + this.replies.say(Phrase.FORTNIGHT_FIRST) : message.text();
		this.outbox.write(carer.chatId(), KIND + dog.id() + "/" + date + "/" + carer.chatId(), message.saying(text));
	}

	/** Takes the wish for no more of it. */
	boolean unwished(Turn turn, Reply reply) {
		boolean unwished = NO_MORE.matcher(Ears.english(turn.message().text(), turn.speech(), turn.allNames()).strip())
			.matches();
		if (unwished) {
			this.households.keepHours(turn.carer().householdId(),
					turn.dog().household().hours().withFortnightPicture(false));
			reply.say(Phrase.FORTNIGHT_OFF);
		}
		return unwished;
	}

}

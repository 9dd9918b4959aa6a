package measuredwalk.care;

import java.time.Duration;

import measuredwalk.conversations.Phrase;
import measuredwalk.conversations.Replies;
import measuredwalk.messaging.IncomingMessage;
import measuredwalk.messaging.Outbox;
import org.springframework.stereotype.Component;

/**
 * Slows down whoever tries codes: a slip of the thumb or two is human, more within the
 * hour is not. How often a code was unknown is told by the answers that went out, on
 * whichever instance.
 */
@Component
class CodeTries {

	private static final int MOST_UNKNOWN = 5;

	private static final Duration WITHIN = Duration.ofHours(1);

	private final Outbox outbox;

	private final Replies replies;

	CodeTries(Outbox outbox, Replies replies) {
		this.outbox = outbox;
		this.replies = replies;
	}

	boolean tooMany(IncomingMessage message) {
		String unknown = this.replies.say(Phrase.UNKNOWN_CODE);
		return this.outbox.countOf(message.chatId(), unknown, WITHIN) >= MOST_UNKNOWN;
	}

}

package measuredwalk.messaging;

import java.time.Instant;

import org.jspecify.annotations.Nullable;

/**
 * A message that did not get through and is not tried again. It carries no words of
 * anybody.
 *
 * @param kind what became of it
 * @param chatId the chat, or null when it could not be read out of what came
 * @param channel the channel
 * @param why what went wrong, in words of the program or the channel
 * @param at when it came in or was written
 */
public record DeadLetter(Kind kind, @Nullable Long chatId, String channel, String why, Instant at) {

	/** What became of a message. */
	public enum Kind {

		/** It could not be sent. */
		NOT_SENT,
		/** It came in and could not be handled. */
		NOT_HANDLED,
		/** Something came in that could not be read. */
		NOT_READ

	}

}

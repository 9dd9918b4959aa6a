package measuredwalk.messaging;

import java.util.HashSet;
import java.util.Set;

import org.jspecify.annotations.Nullable;

/**
 * Marks the thread that handles a message. What is written then answers somebody who
 * waits; what is written at any other time does not.
 */
final class Handling {

	/** The chats that were answered so far; none while no message is handled. */
	private static final ThreadLocal<@Nullable Set<Long>> answered = new ThreadLocal<>();

	private Handling() {
	}

	static boolean inProgress() {
		return answered.get() != null;
	}

	/** Whether this is the first answer to a chat that the message causes. */
	static boolean firstAnswerTo(long chatId) {
		Set<Long> chats = answered.get();
		return chats != null && chats.add(chatId);
	}

	static void run(Runnable handling) {
		answered.set(new HashSet<>());
		try {
			handling.run();
		}
		finally {
			answered.remove();
		}
	}

}

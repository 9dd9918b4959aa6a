package measuredwalk.messaging;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;

/**
 * Whose turn it is, among the workers of this instance: chats in the order in which they
 * have waited, one message each, and never two workers on one chat.
 */
final class ChatTurns {

	private final Supplier<List<Long>> waiting;

	private final Deque<Long> next = new ArrayDeque<>();

	private final Set<Long> busy = new HashSet<>();

	ChatTurns(Supplier<List<Long>> waiting) {
		this.waiting = waiting;
	}

	synchronized Optional<Long> take() {
		this.next.removeIf(this.busy::contains);
		if (this.next.isEmpty()) {
			this.next.addAll(this.waiting.get());
			this.next.removeIf(this.busy::contains);
		}
		Optional<Long> chat = Optional.ofNullable(this.next.poll());
		chat.ifPresent(this.busy::add);
		return chat;
	}

	synchronized void done(long chatId) {
		this.busy.remove(chatId);
	}

	/** Whether another worker could take a turn now. */
	synchronized boolean more() {
		return !this.next.isEmpty();
	}

}

package measuredwalk.messaging;

import java.time.Duration;
import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import java.util.function.LongSupplier;

import org.jspecify.annotations.Nullable;

/**
 * Which chats, and which channels as a whole, are left alone for some time. It lives in
 * memory: after a restart the channel says again how long to wait.
 */
final class Pauses {

	private final LongSupplier nanoTime;

	private final Map<Long, Long> chats = new HashMap<>();

	private final Map<String, Long> channels = new HashMap<>();

	/**
	 * For each channel, the chat that it last told to slow down, with no success since.
	 */
	private final Map<String, Long> slowed = new HashMap<>();

	Pauses(LongSupplier nanoTime) {
		this.nanoTime = nanoTime;
	}

	/**
	 * Takes in what became of a message. A channel that tells a second chat to slow down
	 * before it has taken anything means all chats.
	 */
	void after(Chat chat, Delivery.Outcome outcome, Duration pause) {
		if (!pause.isZero()) {
			this.chats.put(chat.id(), this.nanoTime.getAsLong() + pause.toNanos());
		}
		if (outcome == Delivery.Outcome.TAKEN) {
			this.slowed.remove(chat.channel());
		}
		else if (outcome == Delivery.Outcome.SLOW_DOWN) {
			Long before = this.slowed.put(chat.channel(), chat.id());
			if (before != null && before != chat.id()) {
				this.channels.put(chat.channel(), this.nanoTime.getAsLong() + pause.toNanos());
			}
		}
	}

	/** The chats that are left alone now. */
	Set<Long> pausedChats() {
		long now = this.nanoTime.getAsLong();
		this.chats.values().removeIf((until) -> until - now <= 0);
		return Set.copyOf(this.chats.keySet());
	}

	Duration until(Chat chat) {
		long now = this.nanoTime.getAsLong();
		long wait = Math.max(left(this.chats.get(chat.id()), now), left(this.channels.get(chat.channel()), now));
		return Duration.ofNanos(wait);
	}

	private static long left(@Nullable Long until, long now) {
		return (until != null) ? Math.max(until - now, 0) : 0;
	}

}

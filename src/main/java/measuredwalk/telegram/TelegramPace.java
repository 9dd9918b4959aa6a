package measuredwalk.telegram;

import java.time.Duration;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.Map;
import java.util.function.LongSupplier;

import measuredwalk.messaging.Pace;
import org.jspecify.annotations.Nullable;

/**
 * The Bot API's limits on sending, from its public FAQ: about 30 messages a second to all
 * chats, one a second to one chat, 20 a minute to one group.
 */
final class TelegramPace implements Pace {

	private static final long MINUTE_NANOS = Duration.ofMinutes(1).toNanos();

	/** A little below the limit, so that what is held up on its way can catch up. */
	private static final double OF_THE_LIMIT = 0.98;

	private static final int MOST_REMEMBERED = 2_000;

	private final LongSupplier nanoTime;

	private final long gapNanos;

	private final long chatPauseNanos;

	private final int groupMessagesPerMinute;

	private final Map<String, Long> chatFreeAt = new HashMap<>();

	private final Map<String, Deque<Long>> sentToGroups = new HashMap<>();

	private long freeAt;

	TelegramPace(TelegramSettings settings, LongSupplier nanoTime) {
		this.nanoTime = nanoTime;
		this.gapNanos = (long) (Duration.ofSeconds(1).toNanos() / (settings.messagesPerSecond() * OF_THE_LIMIT));
		this.chatPauseNanos = settings.chatPause().toNanos();
		this.groupMessagesPerMinute = settings.groupMessagesPerMinute();
		this.freeAt = nanoTime.getAsLong();
	}

	@Override
	public Duration untilFree(String address) {
		long now = this.nanoTime.getAsLong();
		long wait = Math.max(left(this.freeAt, now), left(this.chatFreeAt.get(address), now));
		return Duration.ofNanos(Math.max(wait, untilGroupFree(address, now)));
	}

	private long untilGroupFree(String address, long now) {
		Deque<Long> sent = this.sentToGroups.get(address);
		if (sent == null) {
			return 0;
		}
		while (!sent.isEmpty() && sent.peekFirst() + MINUTE_NANOS - now <= 0) {
			sent.removeFirst();
		}
		return (sent.size() < this.groupMessagesPerMinute) ? 0 : left(sent.getFirst() + MINUTE_NANOS, now);
	}

	/**
	 * A message that went out a moment late lets the next one follow sooner, by one gap
	 * at most: the rate is kept on a busy machine, and no burst comes of it.
	 */
	@Override
	public void sending(String address) {
		long now = this.nanoTime.getAsLong();
		long earliest = now - this.gapNanos;
		this.freeAt = ((this.freeAt - earliest > 0) ? this.freeAt : earliest) + this.gapNanos;
		forgetOld(now);
		this.chatFreeAt.put(address, now + this.chatPauseNanos);
		if (address.startsWith("-")) {
			this.sentToGroups.computeIfAbsent(address, (group) -> new ArrayDeque<>()).addLast(now);
		}
	}

	private void forgetOld(long now) {
		if (this.chatFreeAt.size() > MOST_REMEMBERED) {
			this.chatFreeAt.values().removeIf((free) -> free - now <= 0);
			this.sentToGroups.keySet().removeIf((group) -> {
				var unused = untilGroupFree(group, now);
				return this.sentToGroups.get(group).isEmpty();
			});
		}
	}

	private static long left(@Nullable Long freeAt, long now) {
		return (freeAt != null) ? Math.max(freeAt - now, 0) : 0;
	}

}

package measuredwalk.messaging;

import java.time.Duration;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.Iterator;
import java.util.List;
import java.util.Queue;
import java.util.Set;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicLong;

import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * Sends the next message of every chat that is ready for it, side by side. All of it runs
 * on one thread but the handing over itself.
 */
final class SendRound {

	/** A channel that answers slowly still gets its 30 messages a second. */
	private static final int MOST_ON_THE_WAY = 24;

	/** Prompts leave room: an answer must not queue behind a morning's burst of them. */
	private static final int MOST_WHILE_NOBODY_WAITS = 8;

	private static final int MOST_LOOKED_UP = 100;

	/** How often the database is asked while there is still something to send. */
	private static final Duration LOOK_UP_AGAIN = Duration.ofMillis(40);

	/** What is written in so short a time is looked up together. */
	private static final Duration LEAST_APART = Duration.ofMillis(10);

	private static final Logger log = LoggerFactory.getLogger(SendRound.class);

	private final OutboxQueue queue;

	private final Dispatch dispatch;

	private final Carrier carrier;

	private final Bell bell;

	private final Pauses pauses = new Pauses(System::nanoTime);

	private final Set<Long> onTheWay = new HashSet<>();

	private final Queue<Carrier.Carried> arrived = new ConcurrentLinkedQueue<>();

	private final AtomicLong finished = new AtomicLong();

	private final ExecutorService carriers = Executors.newFixedThreadPool(MOST_ON_THE_WAY, (task) -> {
		Thread thread = new Thread(task, "outbox-carrier");
		thread.setDaemon(true);
		return thread;
	});

	private List<WaitingMessage> waiting = new ArrayList<>();

	private long lookedUpNanos = System.nanoTime() - LOOK_UP_AGAIN.toNanos();

	SendRound(OutboxQueue queue, Dispatch dispatch, Bell bell) {
		this.queue = queue;
		this.dispatch = dispatch;
		this.carrier = new Carrier(dispatch);
		this.bell = bell;
	}

	/**
	 * Starts to send what may go now.
	 * @param longest the longest time to wait
	 * @return how long to wait before the next round, unless something happens first
	 */
	Duration send(Duration longest) {
		takeBack();
		Duration apart = this.waiting.isEmpty() ? LEAST_APART : LOOK_UP_AGAIN;
		Duration untilLookUp = apart.minusNanos(System.nanoTime() - this.lookedUpNanos);
		boolean lookUpNow = untilLookUp.isNegative() || untilLookUp.isZero();
		if (lookUpNow) {
			lookUp();
		}
		return sendReady(lookUpNow ? longest : untilLookUp);
	}

	private Duration sendReady(Duration longest) {
		Duration wait = longest;
		for (Iterator<WaitingMessage> each = this.waiting.iterator(); each.hasNext();) {
			WaitingMessage message = each.next();
			Duration untilReady = untilReady(message, longest);
			if (untilReady.isZero()) {
				each.remove();
				carry(message);
			}
			else if (untilReady.compareTo(wait) < 0) {
				wait = untilReady;
			}
		}
		return wait;
	}

	long finished() {
		return this.finished.get();
	}

	void stop() {
		this.carrier.hurry();
		this.carriers.shutdown();
		try {
			if (!this.carriers.awaitTermination(10, TimeUnit.SECONDS)) {
				log.warn("Some messages were still on their way at the end and may be sent once more.");
			}
		}
		catch (InterruptedException ex) {
			Thread.currentThread().interrupt();
		}
	}

	/**
	 * Chats become ready again here and nowhere else, before the database is asked, so
	 * that a message that was just sent cannot be looked up as still waiting.
	 */
	private void takeBack() {
		for (Carrier.Carried each = this.arrived.poll(); each != null; each = this.arrived.poll()) {
			Chat chat = each.message().chat();
			this.pauses.after(chat, each.outcome(), each.pause());
			this.onTheWay.remove(chat.id());
			this.waiting.removeIf((message) -> message.chat().id() == chat.id());
		}
	}

	private void lookUp() {
		Set<Long> busy = new HashSet<>(this.onTheWay);
		busy.addAll(this.pauses.pausedChats());
		this.waiting = new ArrayList<>(this.queue.next(busy, MOST_LOOKED_UP));
		this.lookedUpNanos = System.nanoTime();
	}

	private Duration untilReady(WaitingMessage message, Duration longest) {
		Chat chat = message.chat();
		if (this.onTheWay.size() >= (message.answer() ? MOST_ON_THE_WAY : MOST_WHILE_NOBODY_WAITS)) {
			return longest;
		}
		Duration pause = this.pauses.until(chat);
		Duration pace = this.dispatch.paceOf(chat).untilFree(chat.address());
		return (pause.compareTo(pace) > 0) ? pause : pace;
	}

	private void carry(WaitingMessage message) {
		Chat chat = message.chat();
		this.onTheWay.add(chat.id());
		this.dispatch.paceOf(chat).sending(chat.address());
		this.carriers.execute(() -> {
			this.arrived.add(this.carrier.carry(message));
			this.finished.incrementAndGet();
			this.bell.ring();
		});
	}

}

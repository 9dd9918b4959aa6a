package measuredwalk.messaging;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.locks.LockSupport;
import java.util.stream.IntStream;

import measuredwalk.clock.TimedWork;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Component;

/** Handles stored messages, several chats side by side and each chat in order. */
@Component
@Order(20)
class InboxWorkers implements TimedWork {

	/** Another instance may store a message: nobody rings for that. */
	private static final Duration LOOK_AGAIN = Duration.ofMillis(200);

	private static final Duration AFTER_ELSEWHERE = Duration.ofMillis(10);

	private static final Duration AFTER_TROUBLE = Duration.ofSeconds(1);

	private static final long PAUSE_NANOS = 2_000_000;

	private static final Logger log = LoggerFactory.getLogger(InboxWorkers.class);

	private final InboxQueue queue;

	private final InboxWorker worker;

	private final Bell bell;

	private final ChatTurns turns;

	private final int workers;

	private volatile boolean running;

	private volatile List<Thread> threads = List.of();

	InboxWorkers(InboxQueue queue, InboxWorker worker, Inbox inbox,
			@Value("${measuredwalk.messaging.workers:2}") int workers) {
		this.queue = queue;
		this.worker = worker;
		this.bell = inbox.bell();
		this.turns = new ChatTurns(queue::waitingChats);
		this.workers = workers;
	}

	@Override
	public Optional<Instant> nextDue() {
		return Optional.empty();
	}

	@Override
	public void catchUp() {
		while (this.running && this.queue.anyWaiting()) {
			this.bell.ring();
			LockSupport.parkNanos(PAUSE_NANOS);
		}
	}

	void catchUp(long chatId) {
		while (this.running && this.queue.anyWaiting(chatId)) {
			this.bell.ring();
			LockSupport.parkNanos(PAUSE_NANOS);
		}
	}

	void start() {
		this.running = true;
		this.threads = IntStream.rangeClosed(1, this.workers)
			.mapToObj((number) -> Daemon.start("inbox-" + number, this::work))
			.toList();
	}

	/** Lets each worker finish the message in its hands. */
	void stop() {
		this.running = false;
		this.threads.forEach((thread) -> this.bell.ring());
		this.threads.forEach(Daemon::awaitEnd);
	}

	private void work() {
		while (this.running) {
			try {
				this.turns.take().ifPresentOrElse(this::handle, () -> this.bell.await(LOOK_AGAIN));
			}
			catch (RuntimeException ex) {
				log.warn("Stored messages cannot be handled at the moment; they wait.", ex);
				this.bell.await(AFTER_TROUBLE);
			}
		}
	}

	private void handle(long chatId) {
		if (this.turns.more()) {
			this.bell.ring();
		}
		try {
			if (this.worker.handleOldest(chatId) == InboxWorker.Turn.ELSEWHERE) {
				this.bell.await(AFTER_ELSEWHERE);
			}
		}
		finally {
			this.turns.done(chatId);
		}
	}

}

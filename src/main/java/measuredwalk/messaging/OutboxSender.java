package measuredwalk.messaging;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import java.util.concurrent.locks.LockSupport;

import measuredwalk.clock.TimedWork;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Component;

/**
 * Sends what was written, as quickly as each channel allows. Only one instance sends, and
 * it keeps to real time whatever the rehearsal clock shows.
 */
@Component
@Order(30)
class OutboxSender implements TimedWork {

	/** Another instance may write a message: nobody rings for that. */
	private static final Duration LOOK_AGAIN = Duration.ofMillis(200);

	private static final Duration AFTER_TROUBLE = Duration.ofSeconds(1);

	/** The rehearsal clock waits no longer than this for a channel that takes nothing. */
	private static final Duration PATIENCE = Duration.ofSeconds(30);

	private static final long PAUSE_NANOS = 2_000_000;

	private static final Logger log = LoggerFactory.getLogger(OutboxSender.class);

	private final OutboxQueue queue;

	private final Dispatch dispatch;

	private final Bell bell;

	private final Lease lease;

	private volatile SendRound round;

	private volatile boolean running;

	private volatile Thread thread = Thread.currentThread();

	OutboxSender(OutboxQueue queue, Dispatch dispatch, Outbox outbox, Leases leases) {
		this.queue = queue;
		this.dispatch = dispatch;
		this.bell = outbox.bell();
		this.lease = leases.of("sender");
		this.round = new SendRound(queue, dispatch, this.bell);
	}

	@Override
	public Optional<Instant> nextDue() {
		return Optional.empty();
	}

	@Override
	public void catchUp() {
		long sent = this.round.finished();
		long since = System.nanoTime();
		while (this.running && this.queue.anyWaiting()) {
			this.bell.ring();
			LockSupport.parkNanos(PAUSE_NANOS);
			if (sent != this.round.finished() || !this.lease.held()) {
				sent = this.round.finished();
				since = System.nanoTime();
			}
			else if (System.nanoTime() - since > PATIENCE.toNanos()) {
				log.warn("The clock moves on although messages wait: their channel has taken none for {} s.",
						PATIENCE.toSeconds());
				return;
			}
		}
	}

	void catchUp(long chatId) {
		long since = System.nanoTime();
		while (this.running && this.queue.anyWaiting(chatId) && System.nanoTime() - since < PATIENCE.toNanos()) {
			this.bell.ring();
			LockSupport.parkNanos(PAUSE_NANOS);
		}
	}

	void start() {
		this.round = new SendRound(this.queue, this.dispatch, this.bell);
		this.running = true;
		this.thread = Daemon.start("outbox", this::work);
	}

	/** Lets messages that are on their way arrive, so that they are not sent again. */
	void stop() {
		this.running = false;
		this.bell.ring();
		Daemon.awaitEnd(this.thread);
		this.round.stop();
	}

	private void work() {
		while (this.running) {
			try {
				this.bell.await(this.lease.held() ? this.round.send(LOOK_AGAIN) : LOOK_AGAIN);
			}
			catch (RuntimeException ex) {
				log.warn("Messages cannot be sent at the moment; they wait.", ex);
				this.bell.await(AFTER_TROUBLE);
			}
		}
	}

}

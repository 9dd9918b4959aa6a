package measuredwalk.messaging;

import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;

import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.context.SmartLifecycle;
import org.springframework.stereotype.Component;

/**
 * Keeps messages moving: handles what came in and sends what was written, many times a
 * second, and at once when it is nudged.
 */
@Component
public class Post implements SmartLifecycle {

	private static final long ROUND_MILLIS = 200;

	private static final Logger log = LoggerFactory.getLogger(Post.class);

	private final InboxWorker worker;

	private final OutboxSender sender;

	private volatile @Nullable ScheduledExecutorService rounds;

	Post(InboxWorker worker, OutboxSender sender) {
		this.worker = worker;
		this.sender = sender;
	}

	/** Handles and sends all that waits, and returns when that is done. */
	public void deliverNow() {
		this.worker.catchUp();
		this.sender.catchUp();
	}

	private void round() {
		try {
			this.worker.handleWaiting();
			this.sender.catchUp();
		}
		catch (RuntimeException ex) {
			log.warn("Messages could not be moved on; the next round tries again.", ex);
		}
	}

	@Override
	public void start() {
		ScheduledExecutorService executor = Executors.newSingleThreadScheduledExecutor((task) -> {
			Thread thread = new Thread(task, "post");
			thread.setDaemon(true);
			return thread;
		});
		var unused = executor.scheduleWithFixedDelay(this::round, ROUND_MILLIS, ROUND_MILLIS, TimeUnit.MILLISECONDS);
		this.rounds = executor;
	}

	@Override
	public void stop() {
		ScheduledExecutorService executor = this.rounds;
		this.rounds = null;
		if (executor != null) {
			executor.shutdown();
			awaitLastRound(executor);
		}
	}

	private static void awaitLastRound(ScheduledExecutorService executor) {
		try {
			if (!executor.awaitTermination(10, TimeUnit.SECONDS)) {
				executor.shutdownNow();
			}
		}
		catch (InterruptedException ex) {
			executor.shutdownNow();
			Thread.currentThread().interrupt();
		}
	}

	@Override
	public boolean isRunning() {
		return this.rounds != null;
	}

}

package measuredwalk.messaging;

import org.springframework.context.SmartLifecycle;
import org.springframework.stereotype.Component;

/** Keeps messages moving: has what came in handled, and what was written sent. */
@Component
public class Post implements SmartLifecycle {

	private final InboxWorkers workers;

	private final OutboxSender sender;

	private volatile boolean running;

	Post(InboxWorkers workers, OutboxSender sender) {
		this.workers = workers;
		this.sender = sender;
	}

	/**
	 * Returns when all that a chat said is handled and all that was written to it is
	 * sent.
	 * @param chatId the chat
	 */
	public void deliverNow(long chatId) {
		this.workers.catchUp(chatId);
		this.sender.catchUp(chatId);
	}

	@Override
	public void start() {
		this.workers.start();
		this.sender.start();
		this.running = true;
	}

	@Override
	public void stop() {
		this.running = false;
		this.workers.stop();
		this.sender.stop();
	}

	@Override
	public boolean isRunning() {
		return this.running;
	}

}

package measuredwalk.telegram;

import java.time.Duration;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import measuredwalk.messaging.Inbox;
import measuredwalk.messaging.Lease;
import measuredwalk.messaging.Leases;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.context.SmartLifecycle;
import org.springframework.stereotype.Component;

/**
 * Fetches updates, one instance at a time, and confirms them once they are stored. In
 * webhook mode it only introduces the bot.
 */
@Component
@WithToken
class LongPoller implements SmartLifecycle {

	private static final Duration STANDING_BY = Duration.ofMillis(500);

	private static final Duration WHILE_DEEP = Duration.ofMillis(100);

	private static final long WAIT_FOR_END_MILLIS = 100;

	private static final int MOST_TRIES_TO_END = 100;

	private static final Logger log = LoggerFactory.getLogger(LongPoller.class);

	private final BotApi api;

	private final Intake intake;

	private final Inbox inbox;

	private final Introduction introduction;

	private final PollTroubles troubles;

	private final TelegramSettings settings;

	private final Lease lease;

	private final Semaphore ended = new Semaphore(0);

	/**
	 * Updates below this one are stored and not confirmed yet; null when there are none.
	 */
	private @Nullable Long unconfirmedBelow;

	private volatile @Nullable Thread thread;

	LongPoller(BotApi api, Intake intake, Inbox inbox, Introduction introduction, PollTroubles troubles,
			TelegramSettings settings, Leases leases) {
		this.api = api;
		this.intake = intake;
		this.inbox = inbox;
		this.introduction = introduction;
		this.troubles = troubles;
		this.settings = settings;
		this.lease = leases.of("telegram-poller");
	}

	private void poll() {
		while (this.thread == Thread.currentThread()) {
			Duration pause = this.lease.held() ? round() : STANDING_BY;
			await(pause);
		}
	}

	private Duration round() {
		try {
			this.introduction.attempt();
			if (this.settings.webhook()) {
				this.troubles.none();
				return STANDING_BY;
			}
			if (this.inbox.depth() > this.settings.deepInbox()) {
				return WHILE_DEEP;
			}
			fetch();
			this.troubles.none();
			return Duration.ZERO;
		}
		catch (BotApiProblem ex) {
			return isRunning() ? this.troubles.after(ex) : Duration.ZERO;
		}
		catch (RuntimeException ex) {
			log.warn("Updates could not be stored; they come again.", ex);
			return this.troubles.afterOwnFault();
		}
	}

	/**
	 * Updates that are stored are confirmed by a request of its own, which is answered at
	 * once. The long one that follows names no offset: after a quiet week ids may begin
	 * lower, and with an offset such updates would not be seen.
	 */
	private void fetch() {
		ArrayNode updates = this.api.fetch(this.unconfirmedBelow);
		this.intake.store(updates);
		this.unconfirmedBelow = updates.isEmpty() ? null : lastId(updates) + 1;
	}

	private static long lastId(ArrayNode updates) {
		JsonNode id = updates.get(updates.size() - 1).path("update_id");
		if (!id.isIntegralNumber()) {
			throw new BotApiProblem(BotApiProblem.Kind.OUT_OF_ORDER, Duration.ZERO, "an update has no update_id");
		}
		return id.longValue();
	}

	private void await(Duration pause) {
		try {
			var unused = this.ended.tryAcquire(pause.toNanos(), TimeUnit.NANOSECONDS);
		}
		catch (InterruptedException ex) {
			Thread.currentThread().interrupt();
		}
	}

	@Override
	public void start() {
		this.unconfirmedBelow = null;
		this.ended.drainPermits();
		Thread poller = new Thread(this::poll, "telegram-poller");
		poller.setDaemon(true);
		this.thread = poller;
		poller.start();
	}

	/**
	 * The long request is broken off; nothing that it would have brought is confirmed.
	 * The thread is not interrupted: an embedded database in a file does not survive
	 * that.
	 */
	@Override
	public void stop() {
		Thread poller = this.thread;
		this.thread = null;
		this.ended.release();
		try {
			for (int tries = 0; poller != null && poller.isAlive() && tries < MOST_TRIES_TO_END; tries++) {
				this.api.breakOffFetching();
				poller.join(WAIT_FOR_END_MILLIS);
			}
		}
		catch (InterruptedException ex) {
			Thread.currentThread().interrupt();
		}
	}

	@Override
	public boolean isRunning() {
		return this.thread != null;
	}

}

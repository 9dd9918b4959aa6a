package measuredwalk.messaging;

import java.time.Instant;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import java.util.concurrent.locks.LockSupport;

import measuredwalk.clock.TimedWork;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Component;
import org.springframework.transaction.support.TransactionTemplate;

/**
 * Takes stored messages one by one, chat by chat in order, and has them handled. What one
 * message causes commits in one transaction with the mark that it was handled.
 */
@Component
@Order(20)
class InboxWorker implements TimedWork {

	/** A message that fails this often is set aside, so that it cannot block its chat. */
	private static final int MOST_ATTEMPTS = 3;

	private static final long PAUSE_NANOS = 5_000_000;

	private static final Logger log = LoggerFactory.getLogger(InboxWorker.class);

	private final Inbox inbox;

	private final TransactionTemplate transaction;

	private final ObjectProvider<IncomingHandler> handlers;

	InboxWorker(Inbox inbox, TransactionTemplate transaction, ObjectProvider<IncomingHandler> handlers) {
		this.inbox = inbox;
		this.transaction = transaction;
		this.handlers = handlers;
	}

	@Override
	public Optional<Instant> nextDue() {
		return Optional.empty();
	}

	@Override
	public void catchUp() {
		while (this.inbox.anyWaiting()) {
			if (!handleWaiting()) {
				LockSupport.parkNanos(PAUSE_NANOS);
			}
		}
	}

	/**
	 * Handles the oldest message of each chat that has one and is not locked.
	 * @return true when there was anything to handle
	 */
	boolean handleWaiting() {
		boolean any = false;
		for (long chatId : this.inbox.waitingChats()) {
			any |= handleOldest(chatId);
		}
		return any;
	}

	private boolean handleOldest(long chatId) {
		AtomicReference<IncomingMessage> taken = new AtomicReference<>();
		try {
			return Boolean.TRUE.equals(this.transaction.execute((status) -> handleOldest(chatId, taken)));
		}
		catch (RuntimeException ex) {
			IncomingMessage message = taken.get();
			if (message == null) {
				throw ex;
			}
			failed(message, ex);
			return true;
		}
	}

	private boolean handleOldest(long chatId, AtomicReference<IncomingMessage> taken) {
		if (!this.inbox.lock(chatId)) {
			return false;
		}
		Optional<IncomingMessage> message = this.inbox.oldestWaiting(chatId);
		message.ifPresent((waiting) -> {
			taken.set(waiting);
			this.handlers.getObject().handle(waiting);
			this.inbox.markHandled(waiting.id());
		});
		return message.isPresent();
	}

	private void failed(IncomingMessage message, RuntimeException cause) {
		log.error("Message {} could not be handled.", message.id(), cause);
		this.transaction.executeWithoutResult((status) -> {
			int attempts = this.inbox.countFailure(message.id(), cause.getClass().getName());
			if (attempts >= MOST_ATTEMPTS) {
				this.inbox.markFailed(message.id());
				this.handlers.getObject().apologise(message);
			}
		});
	}

}

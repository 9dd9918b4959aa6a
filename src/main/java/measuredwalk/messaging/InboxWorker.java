package measuredwalk.messaging;

import java.sql.SQLException;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.atomic.AtomicReference;

import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.dao.DataAccessResourceFailureException;
import org.springframework.dao.TransientDataAccessException;
import org.springframework.stereotype.Component;
import org.springframework.transaction.support.TransactionTemplate;

/**
 * Takes the oldest stored message of a chat and has it handled. What the message causes
 * commits in one transaction with the mark that it was handled.
 */
@Component
class InboxWorker {

	/** A message that fails this often is set aside, so that it cannot block its chat. */
	private static final int MOST_ATTEMPTS = 3;

	/** Two chats that write to the same dog may get in each other's way a few times. */
	private static final int MOST_CONFLICTS = 25;

	/**
	 * SQLSTATE of a lost race: serialization failure, deadlock, lock not available, a
	 * unique key taken meanwhile, and what PostgreSQL says to everything after that.
	 */
	private static final Set<String> PASSING = Set.of("40001", "40P01", "55P03", "HYT00", "23505", "25P02");

	private static final Logger log = LoggerFactory.getLogger(InboxWorker.class);

	private final InboxQueue queue;

	private final TransactionTemplate transaction;

	private final ObjectProvider<IncomingHandler> handlers;

	InboxWorker(InboxQueue queue, TransactionTemplate transaction, ObjectProvider<IncomingHandler> handlers) {
		this.queue = queue;
		this.transaction = transaction;
		this.handlers = handlers;
	}

	enum Turn {

		/** A message was handled, or set aside. */
		HANDLED,
		/** Nothing waits in this chat any more. */
		EMPTY,
		/** Another instance has this chat. */
		ELSEWHERE

	}

	Turn handleOldest(long chatId) {
		AtomicReference<IncomingMessage> taken = new AtomicReference<>();
		try {
			return this.transaction.execute((status) -> handleOldest(chatId, taken));
		}
		catch (RuntimeException ex) {
			IncomingMessage message = taken.get();
			if (message == null) {
				throw ex;
			}
			failed(message, ex);
			return Turn.HANDLED;
		}
	}

	private Turn handleOldest(long chatId, AtomicReference<IncomingMessage> taken) {
		if (!this.queue.lock(chatId)) {
			return Turn.ELSEWHERE;
		}
		Optional<IncomingMessage> message = this.queue.oldestWaiting(chatId);
		message.ifPresent((waiting) -> {
			taken.set(waiting);
			Handling.run(() -> this.handlers.getObject().handle(waiting));
			this.queue.markHandled(waiting.id());
		});
		return message.isPresent() ? Turn.HANDLED : Turn.EMPTY;
	}

	private void failed(IncomingMessage message, RuntimeException cause) {
		boolean conflict = passing(cause);
		if (conflict) {
			log.info("Message {} met another writer and is handled again: {}.", message.id(), cause.getClass());
		}
		else {
			log.error("Message {} could not be handled.", message.id(), cause);
		}
		boolean givenUp = Boolean.TRUE.equals(this.transaction.execute((status) -> {
			int attempts = this.queue.countFailure(message.id(), cause.getClass().getName());
			boolean last = attempts >= (conflict ? MOST_CONFLICTS : MOST_ATTEMPTS);
			if (last) {
				this.queue.markFailed(message.id());
			}
			return last;
		}));
		if (givenUp) {
			apologise(message);
		}
	}

	/**
	 * In a transaction of its own: an apology that cannot be written must not bring the
	 * message back to be tried for ever.
	 */
	private void apologise(IncomingMessage message) {
		try {
			this.transaction
				.executeWithoutResult((status) -> Handling.run(() -> this.handlers.getObject().apologise(message)));
		}
		catch (RuntimeException ex) {
			log.error("Nobody could be told that message {} was not handled.", message.id(), ex);
		}
	}

	/**
	 * Whether trying again may help: somebody else wrote the same row at the same time,
	 * or the database is away. The libraries wrap that in many ways, so the database's
	 * own code counts.
	 */
	private static boolean passing(Throwable cause) {
		for (Throwable each = cause; each != null; each = each.getCause()) {
			if (each instanceof TransientDataAccessException || each instanceof DataAccessResourceFailureException
					|| (each instanceof SQLException sql && PASSING.contains(String.valueOf(sql.getSQLState())))) {
				return true;
			}
		}
		return false;
	}

}

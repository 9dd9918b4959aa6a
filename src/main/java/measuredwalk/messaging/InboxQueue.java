package measuredwalk.messaging;

import java.time.Clock;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;

import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** The stored messages that wait to be handled, as the workers see them. */
@Component
class InboxQueue {

	private final JdbcClient database;

	private final Clock clock;

	InboxQueue(JdbcClient database, Clock clock) {
		this.database = database;
		this.clock = clock;
	}

	/** How many messages are in this state: waiting or failed. */
	long count(String state) {
		return this.database.sql("select count(*) from inbox_message where state = ?")
			.param(state)
			.query(Long.class)
			.single();
	}

	/** The number of the newest message, which is how many there have been. */
	long everStored() {
		return this.database.sql("select coalesce(max(id), 0) from inbox_message").query(Long.class).single();
	}

	/** When the message came that has waited longest. */
	Optional<Instant> waitingSince() {
		return this.database
			.sql("select received_at from inbox_message where state = 'waiting' order by id fetch first row only")
			.query((row, number) -> row.getObject(1, OffsetDateTime.class).toInstant())
			.optional();
	}

	boolean anyWaiting() {
		return this.database.sql("select exists (select 1 from inbox_message where state = 'waiting')")
			.query(Boolean.class)
			.single();
	}

	boolean anyWaiting(long chatId) {
		return this.database.sql("select exists (select 1 from inbox_message where state = 'waiting' and chat_id = ?)")
			.param(chatId)
			.query(Boolean.class)
			.single();
	}

	/** Chats with waiting messages, the one that has waited longest first. */
	List<Long> waitingChats() {
		return this.database.sql("""
				select chat_id from inbox_message where state = 'waiting'
				group by chat_id order by min(id) fetch first 64 rows only""").query(Long.class).list();
	}

	/**
	 * Locks the chat's turn for this transaction; two workers never handle one chat at
	 * once, whichever instance they run in.
	 */
	boolean lock(long chatId) {
		return this.database.sql("select chat_id from chat_turn where chat_id = ? for update skip locked")
			.param(chatId)
			.query(Long.class)
			.optional()
			.isPresent();
	}

	Optional<IncomingMessage> oldestWaiting(long chatId) {
		return this.database
			.sql("select " + Inbox.COLUMNS
					+ " from inbox_message where chat_id = ? and state = 'waiting' order by id fetch first row only")
			.param(chatId)
			.query(Inbox::message)
			.optional();
	}

	void markHandled(long id) {
		this.database
			.sql("update inbox_message set state = 'handled', handled_at = ?, attempts = attempts + 1 where id = ?")
			.params(this.clock.instant().atOffset(ZoneOffset.UTC), id)
			.update();
	}

	int countFailure(long id, String failure) {
		this.database.sql("update inbox_message set attempts = attempts + 1, failure = ? where id = ?")
			.params(failure, id)
			.update();
		return this.database.sql("select attempts from inbox_message where id = ?")
			.param(id)
			.query(Integer.class)
			.optional()
			.orElse(0);
	}

	void markFailed(long id) {
		this.database.sql("update inbox_message set state = 'failed', handled_at = ? where id = ?")
			.params(this.clock.instant().atOffset(ZoneOffset.UTC), id)
			.update();
	}

}

package measuredwalk.messaging;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Clock;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;

import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** What came in, each message once, whatever is delivered twice. */
@Service
public class Inbox {

	private static final String COLUMNS = "id, chat_id, sender_name, text, received_at";

	private final JdbcClient database;

	private final Clock clock;

	private final Chats chats;

	Inbox(JdbcClient database, Clock clock, Chats chats) {
		this.database = database;
		this.clock = clock;
		this.chats = chats;
	}

	/**
	 * Stores a message. When this returns it is committed and will be handled, even after
	 * a crash.
	 * @param chat the chat that it came from
	 * @param updateKey the channel's own name for it; a second message of the same name
	 * is ignored
	 * @param senderName what the channel calls the person
	 * @param text what it says
	 * @return true when it is new
	 */
	@Transactional
	public boolean receive(Chat chat, String updateKey, String senderName, String text) {
		this.chats.markBack(chat.id());
		int stored = this.database
			.sql("""
					insert into inbox_message (channel, update_key, chat_id, sender_name, text, received_at, state, attempts)
					values (?, ?, ?, ?, ?, ?, 'waiting', 0) on conflict do nothing""")
			.params(chat.channel(), updateKey, chat.id(), senderName, printable(text),
					this.clock.instant().atOffset(ZoneOffset.UTC))
			.update();
		return stored > 0;
	}

	/**
	 * What was said in a chat, oldest first.
	 * @param chatId the chat
	 * @return all messages that came in
	 */
	public List<IncomingMessage> of(long chatId) {
		return this.database.sql("select " + COLUMNS + " from inbox_message where chat_id = ? order by id")
			.param(chatId)
			.query(Inbox::message)
			.list();
	}

	/** A database takes no NUL, and no reader needs other control characters. */
	private static String printable(String text) {
		StringBuilder kept = new StringBuilder(text.length());
		text.codePoints()
			.filter((point) -> point == '\n' || point == '\t' || !Character.isISOControl(point))
			.forEach(kept::appendCodePoint);
		return kept.toString();
	}

	boolean anyWaiting() {
		return this.database.sql("select exists (select 1 from inbox_message where state = 'waiting')")
			.query(Boolean.class)
			.single();
	}

	List<Long> waitingChats() {
		return this.database.sql("select distinct chat_id from inbox_message where state = 'waiting' order by chat_id")
			.query(Long.class)
			.list();
	}

	/** Locks the chat for this transaction; two workers never handle one chat at once. */
	boolean lock(long chatId) {
		return this.database.sql("select id from chat where id = ? for update skip locked")
			.param(chatId)
			.query(Long.class)
			.optional()
			.isPresent();
	}

	Optional<IncomingMessage> oldestWaiting(long chatId) {
		return this.database
			.sql("select " + COLUMNS
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
			.single();
	}

	void markFailed(long id) {
		this.database.sql("update inbox_message set state = 'failed', handled_at = ? where id = ?")
			.params(this.clock.instant().atOffset(ZoneOffset.UTC), id)
			.update();
	}

	private static IncomingMessage message(ResultSet row, int number) throws SQLException {
		Instant receivedAt = row.getObject("received_at", OffsetDateTime.class).toInstant();
		return new IncomingMessage(row.getLong("id"), row.getLong("chat_id"), row.getString("sender_name"),
				row.getString("text"), receivedAt);
	}

}

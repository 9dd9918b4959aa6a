package measuredwalk.messaging;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Clock;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.Set;

import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** The written messages that wait to be sent, as the sender sees them. */
@Component
class OutboxQueue {

	/** As wide as the column. */
	private static final int LONGEST_FAILURE = 400;

	private static final Set<Long> NO_CHAT = Set.of(-1L);

	private final JdbcClient database;

	private final Clock clock;

	OutboxQueue(JdbcClient database, Clock clock) {
		this.database = database;
		this.clock = clock;
	}

	/**
	 * The oldest waiting message of each chat: a later one never overtakes it. Answers
	 * stand before prompts.
	 */
	List<WaitingMessage> next(Collection<Long> busyChats, int most) {
		return this.database.sql("""
				select o.id, o.chat_id, c.channel, c.address, o.text, o.choices, o.picture, o.picture_words,
				o.document, o.document_instead, o.parts_sent, o.attempts, o.priority
				from outbox_message o join chat c on c.id = o.chat_id
				where o.state = 'waiting' and o.chat_id not in (:busy) and not exists
				(select 1 from outbox_message e where e.chat_id = o.chat_id and e.state = 'waiting' and e.id < o.id)
				order by o.priority, o.id fetch first :most rows only""")
			.param("busy", busyChats.isEmpty() ? NO_CHAT : busyChats)
			.param("most", most)
			.query(OutboxQueue::waiting)
			.list();
	}

	/** How many messages are in this state: waiting or dead. */
	long count(String state) {
		return this.database.sql("select count(*) from outbox_message where state = ?")
			.param(state)
			.query(Long.class)
			.single();
	}

	/** The number of the newest message, which is how many there have been. */
	long everWritten() {
		return this.database.sql("select coalesce(max(id), 0) from outbox_message").query(Long.class).single();
	}

	/** When the message was written that has waited longest. */
	Optional<Instant> waitingSince() {
		return this.database
			.sql("select written_at from outbox_message where state = 'waiting' order by id fetch first row only")
			.query((row, number) -> row.getObject(1, OffsetDateTime.class).toInstant())
			.optional();
	}

	boolean anyWaiting() {
		return this.database.sql("select exists (select 1 from outbox_message where state = 'waiting')")
			.query(Boolean.class)
			.single();
	}

	boolean anyWaiting(long chatId) {
		return this.database.sql("select exists (select 1 from outbox_message where state = 'waiting' and chat_id = ?)")
			.param(chatId)
			.query(Boolean.class)
			.single();
	}

	/**
	 * Whether the chat of a message takes any, as far as is known. Empty when the message
	 * was sent by another instance, or erased, since it was looked up.
	 */
	Optional<Boolean> stillWaitingForReachable(WaitingMessage message) {
		return this.database.sql("""
				select c.gone_at is null from outbox_message o join chat c on c.id = o.chat_id
				where o.id = ? and o.state = 'waiting' and o.parts_sent = ?""")
			.params(message.id(), message.partsSent())
			.query(Boolean.class)
			.optional();
	}

	void markPartSent(long id) {
		this.database.sql("update outbox_message set parts_sent = parts_sent + 1, attempts = 0 where id = ?")
			.param(id)
			.update();
	}

	void markSent(long id, String channelMessageId) {
		this.database.sql("""
				update outbox_message set state = 'sent', parts_sent = parts_sent + 1, attempts = attempts + 1,
				sent_at = ?, channel_message_id = ? where id = ?""")
			.params(this.clock.instant().atOffset(ZoneOffset.UTC), channelMessageId, id)
			.update();
	}

	void markForLater(long id, String why) {
		this.database.sql("update outbox_message set attempts = attempts + 1, failure = ? where id = ?")
			.params(shortened(why), id)
			.update();
	}

	void markDead(long id, String why) {
		this.database.sql("update outbox_message set state = 'dead', attempts = attempts + 1, failure = ? where id = ?")
			.params(shortened(why), id)
			.update();
	}

	private static String shortened(String text) {
		return (text.length() > LONGEST_FAILURE) ? text.substring(0, LONGEST_FAILURE) : text;
	}

	private static WaitingMessage waiting(ResultSet row, int number) throws SQLException {
		Chat chat = new Chat(row.getLong("chat_id"), row.getString("channel"), row.getString("address"));
		return new WaitingMessage(row.getLong("id"), chat, Outbox.message(row), row.getInt("parts_sent"),
				row.getInt("attempts"), row.getInt("priority") == Outbox.ANSWER);
	}

}

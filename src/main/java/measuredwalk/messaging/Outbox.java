package measuredwalk.messaging;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;

import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;

/** What is to be sent, in order for each chat, each message under a key of its own. */
@Service
public class Outbox {

	private static final String COLUMNS = "id, chat_id, text, choices, written_at, sent_at";

	/** Choices stand in one column, each on a line; no choice holds a line break. */
	private static final String CHOICE_BREAK = "\n";

	private final JdbcClient database;

	private final Clock clock;

	Outbox(JdbcClient database, Clock clock) {
		this.database = database;
		this.clock = clock;
	}

	/**
	 * Writes a message to be sent once this transaction has committed.
	 * @param chatId the chat that it goes to
	 * @param uniqueKey what it is the answer to; a second message of the same key is not
	 * sent
	 * @param message what it says
	 */
	public void write(long chatId, String uniqueKey, OutgoingMessage message) {
		OffsetDateTime now = this.clock.instant().atOffset(ZoneOffset.UTC);
		this.database.sql("""
				insert into outbox_message (chat_id, unique_key, text, choices, written_at, not_before, state, attempts)
				values (?, ?, ?, ?, ?, ?, 'waiting', 0) on conflict do nothing""")
			.params(chatId, uniqueKey, message.text(), String.join(CHOICE_BREAK, message.choices()), now, now)
			.update();
	}

	/**
	 * What was written to a chat, oldest first.
	 * @param chatId the chat
	 * @return all messages, sent or not yet
	 */
	public List<OutboxEntry> of(long chatId) {
		return this.database.sql("select " + COLUMNS + " from outbox_message where chat_id = ? order by id")
			.param(chatId)
			.query(Outbox::entry)
			.list();
	}

	/**
	 * Whether a message could not be sent so far, though it was tried.
	 * @param keyBeginning how the unique keys of the messages begin
	 * @return true when at least one was tried and not taken
	 */
	public boolean anyFailed(String keyBeginning) {
		return this.database.sql(
				"select exists (select 1 from outbox_message where unique_key like ? and state <> 'sent' and attempts > 0)")
			.param(keyBeginning + "%")
			.query(Boolean.class)
			.single();
	}

	/** The oldest waiting message of each chat: a later one never overtakes it. */
	List<OutboxEntry> due() {
		return this.database.sql("select " + COLUMNS + " " + """
				from outbox_message where state = 'waiting' and not_before <= ? and id in
				(select min(id) from outbox_message where state = 'waiting' group by chat_id) order by id""")
			.param(this.clock.instant().atOffset(ZoneOffset.UTC))
			.query(Outbox::entry)
			.list();
	}

	Optional<Instant> nextDue() {
		return this.database.sql("select min(not_before) from outbox_message where state = 'waiting'")
			.query((row, number) -> Optional.ofNullable(instant(row, 1)))
			.single();
	}

	void markSent(long id, String channelMessageId) {
		this.database.sql("""
				update outbox_message set state = 'sent', attempts = attempts + 1, sent_at = ?, channel_message_id = ?
				where id = ?""").params(this.clock.instant().atOffset(ZoneOffset.UTC), channelMessageId, id).update();
	}

	void markForLater(long id, Duration wait, String why) {
		this.database.sql("update outbox_message set attempts = attempts + 1, not_before = ?, failure = ? where id = ?")
			.params(this.clock.instant().plus(wait).atOffset(ZoneOffset.UTC), why, id)
			.update();
	}

	void markDead(long id, String why) {
		this.database.sql("update outbox_message set state = 'dead', attempts = attempts + 1, failure = ? where id = ?")
			.params(why, id)
			.update();
	}

	private static OutboxEntry entry(ResultSet row, int number) throws SQLException {
		String choices = row.getString("choices");
		List<String> offered = choices.isEmpty() ? List.of() : List.of(choices.split(CHOICE_BREAK));
		Instant writtenAt = row.getObject("written_at", OffsetDateTime.class).toInstant();
		return new OutboxEntry(row.getLong("id"), row.getLong("chat_id"),
				new OutgoingMessage(row.getString("text"), offered), writtenAt, instant(row, 6));
	}

	private static @Nullable Instant instant(ResultSet row, int column) throws SQLException {
		OffsetDateTime time = row.getObject(column, OffsetDateTime.class);
		return (time != null) ? time.toInstant() : null;
	}

}

package measuredwalk.messaging;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Types;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.Collection;
import java.util.List;
import java.util.Optional;

import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.transaction.support.TransactionSynchronization;
import org.springframework.transaction.support.TransactionSynchronizationManager;
import org.springframework.stereotype.Service;

/** What is to be sent, in order for each chat, each message under a key of its own. */
@Service
public class Outbox {

	/** Choices stand in one column, each on a line; no choice holds a line break. */
	private static final String CHOICE_BREAK = "\n";

	static final int ANSWER = 0;

	private static final int PROMPT = 1;

	private final JdbcClient database;

	private final Clock clock;

	private final Bell bell = new Bell();

	Outbox(JdbcClient database, Clock clock) {
		this.database = database;
		this.clock = clock;
	}

	/**
	 * Writes a message to be sent once this transaction has committed. What is written
	 * while a message is handled answers somebody who waits, and goes out before
	 * everything else.
	 * @param chatId the chat that it goes to
	 * @param uniqueKey what it is the answer to; a second message of the same key is not
	 * sent
	 * @param message what it says
	 */
	public void write(long chatId, String uniqueKey, OutgoingMessage message) {
		OffsetDateTime now = this.clock.instant().atOffset(ZoneOffset.UTC);
		boolean answer = Handling.inProgress();
		MessagePicture picture = message.picture();
		MessageDocument document = message.document();
		this.database
			.sql("""
					insert into outbox_message (chat_id, unique_key, text, choices, picture, picture_words, document,
					document_instead, written_at, state, attempts, priority) values (:chat, :key, :text, :choices, :picture, :words,
					:document, :instead, :now, 'waiting', 0, :priority) on conflict do nothing""")
			.param("chat", chatId)
			.param("key", uniqueKey)
			.param("text", message.text())
			.param("choices", String.join(CHOICE_BREAK, message.choices()))
			.param("picture", (picture != null) ? picture.name() : null, Types.VARCHAR)
			.param("words", (picture != null) ? picture.inWords() : null, Types.VARCHAR)
			.param("document", (document != null) ? document.name() : null, Types.VARCHAR)
			.param("instead", (document != null) ? document.instead() : null, Types.VARCHAR)
			.param("now", now)
			.param("priority", answer ? ANSWER : PROMPT)
			.update();
		if (answer) {
			hurryBeforeCommit(chatId);
		}
		this.bell.ringAfterCommit();
	}

	/**
	 * An answer cannot overtake in its own chat, so what stands before it goes first. One
	 * look at the end does for all that was written to the chat.
	 */
	private void hurryBeforeCommit(long chatId) {
		if (Handling.firstAnswerTo(chatId)) {
			TransactionSynchronizationManager.registerSynchronization(new TransactionSynchronization() {

				@Override
				public void beforeCommit(boolean readOnly) {
					hurry(chatId);
				}

			});
		}
	}

	private void hurry(long chatId) {
		this.database
			.sql("update outbox_message set priority = ? where chat_id = ? and state = 'waiting' and priority > ?")
			.params(ANSWER, chatId, ANSWER)
			.update();
	}

	/**
	 * What was written to a chat, oldest first.
	 * @param chatId the chat
	 * @return all messages, sent or not yet
	 */
	public List<OutboxEntry> of(long chatId) {
		return this.database
			.sql("""
					select id, chat_id, text, choices, picture, picture_words, document, document_instead, written_at, sent_at
					from outbox_message where chat_id = ? order by id""")
			.param(chatId)
			.query(Outbox::entry)
			.list();
	}

	/**
	 * One message of those written to a chat.
	 * @param chatId the chat
	 * @param outboxId the message's number
	 * @return the message, or empty when this chat was written no such message
	 */
	public Optional<OutgoingMessage> message(long chatId, long outboxId) {
		return this.database.sql("""
				select text, choices, picture, picture_words, document, document_instead from outbox_message
				where id = ? and chat_id = ?""")
			.params(outboxId, chatId)
			.query((row, number) -> message(row))
			.optional();
	}

	/**
	 * What was written to a chat last.
	 * @param chatId the chat
	 * @return the text, or empty when nothing was written yet
	 */
	public Optional<String> lastText(long chatId) {
		return this.database
			.sql("select text from outbox_message where chat_id = ? order by id desc fetch first row only")
			.param(chatId)
			.query(String.class)
			.optional();
	}

	/**
	 * The last message of some kind to any of some chats.
	 * @param chatIds the chats
	 * @param keyBeginning how the unique keys of that kind begin
	 * @return its text, or empty when there was none yet
	 */
	public Optional<String> lastText(Collection<Long> chatIds, String keyBeginning) {
		if (chatIds.isEmpty()) {
			return Optional.empty();
		}
		return this.database.sql("""
				select text from outbox_message where chat_id in (:chats) and unique_key like :beginning
				order by id desc fetch first row only""")
			.param("chats", chatIds)
			.param("beginning", keyBeginning + "%")
			.query(String.class)
			.optional();
	}

	/**
	 * The unique keys of the messages of a text that were written to a chat.
	 * @param chatId the chat
	 * @param text the text
	 * @return their keys, oldest first
	 */
	public List<String> keysOf(long chatId, String text) {
		return this.database.sql("select unique_key from outbox_message where chat_id = ? and text = ? order by id")
			.params(chatId, text)
			.query(String.class)
			.list();
	}

	/**
	 * How often a text was written to a chat lately.
	 * @param chatId the chat
	 * @param text the text
	 * @param within how far back
	 * @return how often
	 */
	public int countOf(long chatId, String text, Duration within) {
		return this.database
			.sql("select count(*) from outbox_message where chat_id = ? and text = ? and written_at > ?")
			.params(chatId, text, this.clock.instant().minus(within).atOffset(ZoneOffset.UTC))
			.query(Integer.class)
			.single();
	}

	/**
	 * Looks up a choice that was offered, when its button is pressed.
	 * @param channel the channel that the press came from
	 * @param address the chat's address on it
	 * @param outboxId the message that offered the choice
	 * @param index the choice's place in the message, from 0
	 * @return the choice's text, or empty when this chat was offered no such choice
	 */
	public Optional<String> choice(String channel, String address, long outboxId, int index) {
		return this.database.sql("""
				select choices from outbox_message where id = ? and chat_id =
				(select id from chat where channel = ? and address = ?)""")
			.params(outboxId, channel, address)
			.query((row, number) -> choices(row))
			.optional()
			.filter((offered) -> index >= 0 && index < offered.size())
			.map((offered) -> offered.get(index));
	}

	/**
	 * Whether a message could not be sent so far, though it was tried.
	 * @param keyBeginning how the unique keys of the messages begin
	 * @return true when at least one was tried and not taken
	 */
	public boolean anyFailed(String keyBeginning) {
		return this.database.sql("""
				select exists (select 1 from outbox_message
				where state in ('waiting', 'dead') and unique_key like ? and attempts > 0)""")
			.param(keyBeginning + "%")
			.query(Boolean.class)
			.single();
	}

	/** Rings when a message has been written. */
	Bell bell() {
		return this.bell;
	}

	static OutgoingMessage message(ResultSet row) throws SQLException {
		return new OutgoingMessage(row.getString("text"), choices(row), picture(row), document(row));
	}

	private static @Nullable MessageDocument document(ResultSet row) throws SQLException {
		String name = row.getString("document");
		return (name != null) ? new MessageDocument(name, row.getString("document_instead")) : null;
	}

	private static @Nullable MessagePicture picture(ResultSet row) throws SQLException {
		String name = row.getString("picture");
		return (name != null) ? new MessagePicture(name, row.getString("picture_words")) : null;
	}

	private static List<String> choices(ResultSet row) throws SQLException {
		String choices = row.getString("choices");
		return choices.isEmpty() ? List.of() : List.of(choices.split(CHOICE_BREAK));
	}

	private static OutboxEntry entry(ResultSet row, int number) throws SQLException {
		Instant writtenAt = row.getObject("written_at", OffsetDateTime.class).toInstant();
		return new OutboxEntry(row.getLong("id"), row.getLong("chat_id"), message(row), writtenAt, sentAt(row));
	}

	private static @Nullable Instant sentAt(ResultSet row) throws SQLException {
		OffsetDateTime time = row.getObject("sent_at", OffsetDateTime.class);
		return (time != null) ? time.toInstant() : null;
	}

}

package measuredwalk.messaging;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Clock;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;

import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** What came in, each message once, whatever is delivered twice. */
@Service
public class Inbox {

	static final String COLUMNS = "id, chat_id, sender_name, text, received_at, attachment_kind, attachment_reference";

	/** As wide as the column. */
	private static final int LONGEST_NAME = 120;

	/** As wide as the column. */
	private static final int LONGEST_FAILURE = 400;

	private final JdbcClient database;

	private final Clock clock;

	private final Chats chats;

	private final Bell bell = new Bell();

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
		return receive(chat.channel(),
				new Arrival(chat.address(), updateKey, senderName, text, null, this.clock.instant()));
	}

	/**
	 * Stores a message. It will be handled once the transaction has committed, even after
	 * a crash; without a transaction it is committed when this returns.
	 * @param channel the channel's name
	 * @param arrival the message
	 * @return true when it is new
	 */
	@Transactional
	public boolean receive(String channel, Arrival arrival) {
		Chat chat = this.chats.heardFrom(channel, arrival);
		Attachment attachment = arrival.attachment();
		int stored = this.database.sql("""
				insert into inbox_message (channel, update_key, chat_id, sender_name, text, received_at,
				attachment_kind, attachment_reference, state, attempts)
				values (?, ?, ?, ?, ?, ?, ?, ?, 'waiting', 0) on conflict do nothing""")
			.params(channel, arrival.key(), chat.id(), shortened(printable(arrival.senderName()), LONGEST_NAME),
					printable(arrival.text()), arrival.sentAt().atOffset(ZoneOffset.UTC),
					(attachment != null) ? attachment.kind().name() : null,
					(attachment != null) ? attachment.reference() : null)
			.update();
		this.bell.ringAfterCommit();
		return stored > 0;
	}

	/**
	 * Keeps what came in and cannot be read, as it came, so that nothing is lost and
	 * nothing waits behind it.
	 * @param channel the channel's name
	 * @param key the channel's own name for it
	 * @param raw what came
	 * @param failure why it cannot be read, without its text
	 */
	public void setAside(String channel, String key, String raw, String failure) {
		this.database.sql("""
				insert into dead_update (channel, update_key, raw, failure, received_at)
				values (?, ?, ?, ?, ?) on conflict do nothing""")
			.params(channel, key, printable(raw), shortened(failure, LONGEST_FAILURE),
					this.clock.instant().atOffset(ZoneOffset.UTC))
			.update();
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

	/**
	 * The channel's own name for the message that came last in a chat.
	 * @param channel the channel's name
	 * @param address the chat's address
	 * @return its key, or empty when nothing came yet
	 */
	public Optional<String> lastKey(String channel, String address) {
		return this.database.sql("""
				select update_key from inbox_message where chat_id =
				(select id from chat where channel = ? and address = ?) order by id desc fetch first row only""")
			.params(channel, address)
			.query(String.class)
			.optional();
	}

	/**
	 * How many messages wait to be handled. A channel fetches no more while there are too
	 * many.
	 * @return their number
	 */
	public long depth() {
		return this.database.sql("select count(*) from inbox_message where state = 'waiting'")
			.query(Long.class)
			.single();
	}

	/** Rings when a message has come in. */
	Bell bell() {
		return this.bell;
	}

	/** A database takes no NUL, and no reader needs other control characters. */
	private static String printable(String text) {
		StringBuilder kept = new StringBuilder(text.length());
		text.codePoints()
			.filter((point) -> point == '\n' || point == '\t' || !Character.isISOControl(point))
			.filter((point) -> Character.getType(point) != Character.SURROGATE)
			.forEach(kept::appendCodePoint);
		return kept.toString();
	}

	private static String shortened(String text, int longest) {
		if (text.length() <= longest) {
			return text;
		}
		return text.substring(0, Character.isHighSurrogate(text.charAt(longest - 1)) ? longest - 1 : longest);
	}

	static IncomingMessage message(ResultSet row, int number) throws SQLException {
		Instant receivedAt = row.getObject("received_at", OffsetDateTime.class).toInstant();
		return new IncomingMessage(row.getLong("id"), row.getLong("chat_id"), row.getString("sender_name"),
				row.getString("text"), receivedAt, attachment(row));
	}

	private static @Nullable Attachment attachment(ResultSet row) throws SQLException {
		String kind = row.getString("attachment_kind");
		return (kind != null) ? new Attachment(Attachment.Kind.valueOf(kind), row.getString("attachment_reference"))
				: null;
	}

}

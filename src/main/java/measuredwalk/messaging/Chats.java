package measuredwalk.messaging;

import java.time.Clock;
import java.time.ZoneOffset;
import java.util.Collection;
import java.util.Optional;

import org.jspecify.annotations.Nullable;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** The chats that are known. */
@Service
public class Chats {

	/** As wide as the column. */
	private static final int LONGEST_CODE = 20;

	private final JdbcClient database;

	private final Clock clock;

	private final ApplicationEventPublisher events;

	Chats(JdbcClient database, Clock clock, ApplicationEventPublisher events) {
		this.events = events;
		this.database = database;
		this.clock = clock;
	}

	/**
	 * The chat at an address; it is made when it is not known yet.
	 * @param channel the channel's name
	 * @param address the address on that channel
	 * @return the chat
	 */
	@Transactional
	public Chat at(String channel, String address) {
		return find(channel, address).orElseGet(() -> make(channel, address));
	}

	/**
	 * The chat at an address from which something came: whatever it was before, it can be
	 * reached. The language of its program is kept, where the channel tells it.
	 */
	Chat heardFrom(String channel, Arrival arrival) {
		String address = arrival.address();
		Optional<Heard> known = this.database
			.sql("select id, gone_at is not null as gone, language from chat where channel = ? and address = ?")
			.params(channel, address)
			.query((row, number) -> new Heard(row.getLong("id"), row.getBoolean("gone"), row.getString("language")))
			.optional();
		known.filter(Heard::gone).ifPresent((chat) -> markBack(chat.id()));
		Chat chat = known.map((heard) -> new Chat(heard.id(), channel, address))
			.orElseGet(() -> make(channel, address));
		String language = arrival.language();
		if (language != null && !shortened(language).equals(known.map(Heard::language).orElse(null))) {
			speaks(chat.id(), language);
		}
		return chat;
	}

	private record Heard(long id, boolean gone, @Nullable String language) {
	}

	private Chat make(String channel, String address) {
		this.database.sql("insert into chat (channel, address, created_at) values (?, ?, ?) on conflict do nothing")
			.params(channel, address, this.clock.instant().atOffset(ZoneOffset.UTC))
			.update();
		Chat chat = find(channel, address).orElseThrow();
		this.database.sql("insert into chat_turn (chat_id) values (?) on conflict do nothing")
			.param(chat.id())
			.update();
		return chat;
	}

	/**
	 * Finds a chat by its number.
	 * @param id the number
	 * @return the chat, or empty when it is not known
	 */
	public Optional<Chat> find(long id) {
		return this.database.sql("select id, channel, address from chat where id = ?")
			.param(id)
			.query(Chat.class)
			.optional();
	}

	/**
	 * Finds a chat by its address.
	 * @param channel the channel's name
	 * @param address the address on that channel
	 * @return the chat, or empty when it is not known
	 */
	public Optional<Chat> known(String channel, String address) {
		return find(channel, address);
	}

	/**
	 * Notes that a chat has another address from now on. What came from there before this
	 * was known is put to the same chat. Does nothing when the chat is not known.
	 * @param channel the channel's name
	 * @param from its address until now
	 * @param to its address from now on
	 */
	@Transactional
	public void moved(String channel, String from, String to) {
		find(channel, from).ifPresent((chat) -> {
			find(channel, to).ifPresent((early) -> put(early.id(), chat.id()));
			this.database.sql("update chat set address = ? where id = ?").params(to, chat.id()).update();
		});
	}

	private void put(long early, long chat) {
		this.database.sql("update inbox_message set chat_id = ? where chat_id = ?").params(chat, early).update();
		this.database.sql("update outbox_message set chat_id = ? where chat_id = ?").params(chat, early).update();
		this.database.sql("delete from chat where id = ?").param(early).update();
	}

	private Optional<Chat> find(String channel, String address) {
		return this.database.sql("select id, channel, address from chat where channel = ? and address = ?")
			.params(channel, address)
			.query(Chat.class)
			.optional();
	}

	/**
	 * Keeps the language that a chat's program is set to.
	 * @param id the chat
	 * @param code an IETF tag such as {@code es-MX}
	 */
	void speaks(long id, String code) {
		this.database.sql("update chat set language = ? where id = ?").params(shortened(code), id).update();
	}

	private static String shortened(String code) {
		return (code.length() > LONGEST_CODE) ? code.substring(0, LONGEST_CODE) : code;
	}

	/**
	 * The language that a chat's program is set to: a guess at its person's.
	 * @param id the chat
	 * @return an IETF tag, or empty when it is not known
	 */
	public Optional<String> language(long id) {
		return this.database.sql("select language from chat where id = ? and language is not null")
			.param(id)
			.query(String.class)
			.optional();
	}

	/**
	 * Forgets chats and all that was said in them.
	 * @param ids their numbers
	 */
	@Transactional
	public void forget(Collection<Long> ids) {
		ids.forEach((id) -> this.database.sql("delete from chat where id = ?").param(id).update());
	}

	/**
	 * Notes that nothing can be sent to a chat: its person blocked the bot, or its group
	 * put it out. Does nothing when the chat is not known.
	 * @param channel the channel's name
	 * @param address the address on that channel
	 */
	public void gone(String channel, String address) {
		find(channel, address).ifPresent((chat) -> markGone(chat.id()));
	}

	/**
	 * Notes that messages can be sent to a chat again.
	 * @param channel the channel's name
	 * @param address the address on that channel
	 */
	public void back(String channel, String address) {
		find(channel, address).ifPresent((chat) -> markBack(chat.id()));
	}

	/**
	 * Whether messages can be sent to a chat, as far as is known.
	 * @param id the chat's number
	 * @return false when the person blocked the bot, or the chat is not known
	 */
	public boolean reachable(long id) {
		return this.database.sql("select exists (select 1 from chat where id = ? and gone_at is null)")
			.param(id)
			.query(Boolean.class)
			.single();
	}

	void markGone(long id) {
		int gone = this.database.sql("update chat set gone_at = ? where id = ? and gone_at is null")
			.params(this.clock.instant().atOffset(ZoneOffset.UTC), id)
			.update();
		if (gone > 0) {
			this.events.publishEvent(new ChatGone(id));
		}
	}

	/** A chat that is not gone is left alone: its row may be locked by a worker. */
	void markBack(long id) {
		this.database.sql("update chat set gone_at = null where id = ? and gone_at is not null").param(id).update();
	}

}

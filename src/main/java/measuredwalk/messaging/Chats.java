package measuredwalk.messaging;

import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Collection;
import java.util.Optional;

import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** The chats that are known. */
@Service
public class Chats {

	private final JdbcClient database;

	private final Clock clock;

	Chats(JdbcClient database, Clock clock) {
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
		this.database.sql("insert into chat (channel, address, created_at) values (?, ?, ?) on conflict do nothing")
			.params(channel, address, this.clock.instant().atOffset(ZoneOffset.UTC))
			.update();
		return this.database.sql("select id, channel, address from chat where channel = ? and address = ?")
			.params(channel, address)
			.query(Chat.class)
			.single();
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
	 * Forgets chats and all that was said in them.
	 * @param ids their numbers
	 */
	@Transactional
	public void forget(Collection<Long> ids) {
		ids.forEach((id) -> this.database.sql("delete from chat where id = ?").param(id).update());
	}

	void markGone(long id, Instant at) {
		this.database.sql("update chat set gone_at = ? where id = ?").params(at.atOffset(ZoneOffset.UTC), id).update();
	}

	void markBack(long id) {
		this.database.sql("update chat set gone_at = null where id = ?").param(id).update();
	}

}

package measuredwalk.escalation;

import java.time.Clock;
import java.time.Duration;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;

import measuredwalk.household.SecretCode;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/**
 * The chats of the clinic's staff that get its alerts, and the codes by which they join.
 */
@Service
@Transactional
public class StaffChats {

	private static final Duration CODE_GOOD_FOR = Duration.ofDays(7);

	private final JdbcClient database;

	private final Clock clock;

	StaffChats(JdbcClient database, Clock clock) {
		this.database = database;
		this.clock = clock;
	}

	/**
	 * Makes a code by which one staff chat can join.
	 * @param by who makes it
	 * @return the code
	 */
	public String makeCode(String by) {
		String code = SecretCode.make();
		OffsetDateTime now = now();
		this.database.sql("insert into alert_code (code, made_by, made_at, expires_at) values (?, ?, ?, ?)")
			.params(code, by, now, now.plus(CODE_GOOD_FOR))
			.update();
		return code;
	}

	/**
	 * Joins a chat by a code.
	 * @param typedCode the code as it was typed
	 * @param chatId the chat
	 * @return true when the code was a good one for staff
	 */
	public boolean join(String typedCode, long chatId) {
		int used = this.database
			.sql("update alert_code set used_at = ? where code = ? and used_at is null and expires_at > ?")
			.params(now(), SecretCode.tidy(typedCode), now())
			.update();
		if (used == 0) {
			return false;
		}
		this.database.sql("insert into staff_chat (chat_id, joined_at) values (?, ?) on conflict do nothing")
			.params(chatId, now())
			.update();
		this.database.sql("update staff_chat set stopped_at = null where chat_id = ?").param(chatId).update();
		return true;
	}

	/**
	 * The chats that get alerts.
	 * @return the chats, in the order in which they joined
	 */
	@Transactional(readOnly = true)
	public List<StaffChat> all() {
		return this.database.sql("""
				select staff_chat.chat_id, chat.channel, staff_chat.joined_at from staff_chat
				join chat on chat.id = staff_chat.chat_id
				where staff_chat.stopped_at is null order by staff_chat.joined_at, staff_chat.chat_id""")
			.query((row, number) -> new StaffChat(row.getLong("chat_id"), row.getString("channel"),
					row.getObject("joined_at", OffsetDateTime.class).toInstant()))
			.list();
	}

	/**
	 * Whether a chat gets alerts.
	 * @param chatId the chat
	 * @return true when it joined and was not stopped
	 */
	@Transactional(readOnly = true)
	public boolean isOne(long chatId) {
		return this.database.sql("select exists (select 1 from staff_chat where chat_id = ? and stopped_at is null)")
			.param(chatId)
			.query(Boolean.class)
			.single();
	}

	/**
	 * Ends alerts to a chat; a new code lets it join again.
	 * @param chatId the chat
	 */
	public void stop(long chatId) {
		this.database.sql("update staff_chat set stopped_at = ? where chat_id = ?").params(now(), chatId).update();
	}

	private OffsetDateTime now() {
		return this.clock.instant().atOffset(ZoneOffset.UTC);
	}

}

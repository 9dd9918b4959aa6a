package measuredwalk.escalation.delivery;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** E-mails that are to be sent, each tried until it is taken. */
@Component
class AlertMails {

	private static final int MOST_ATTEMPTS = 12;

	private static final int LONGEST_FAILURE = 400;

	private final JdbcClient database;

	private final Clock clock;

	AlertMails(JdbcClient database, Clock clock) {
		this.database = database;
		this.clock = clock;
	}

	/** An e-mail that waits. */
	record Waiting(long id, UUID alertId, int round, String address, int attempts) {
	}

	void write(UUID alertId, int round, String address) {
		this.database.sql("""
				insert into alert_mail (alert_id, round, address, due_at, state, attempts)
				values (?, ?, ?, ?, 'waiting', 0) on conflict do nothing""")
			.params(alertId, round, address, now())
			.update();
	}

	List<Waiting> due() {
		return this.database.sql("""
				select id, alert_id, round, address, attempts from alert_mail
				where state = 'waiting' and due_at <= ? order by id for update skip locked""")
			.param(now())
			.query(Waiting.class)
			.list();
	}

	Optional<Instant> nextDue() {
		return this.database.sql("select min(due_at) from alert_mail where state = 'waiting'")
			.query((row, number) -> Optional.ofNullable(row.getObject(1, OffsetDateTime.class))
				.map(OffsetDateTime::toInstant))
			.single();
	}

	void sent(Waiting mail) {
		this.database.sql("update alert_mail set state = 'sent', attempts = attempts + 1, sent_at = ? where id = ?")
			.params(now(), mail.id())
			.update();
	}

	/** The pause doubles from a minute to half an hour; then it is given up and shown. */
	void failed(Waiting mail, String why) {
		int attempts = mail.attempts() + 1;
		Duration pause = Duration.ofMinutes(Math.min(30, 1L << Math.min(5, attempts - 1)));
		String failure = (why.length() <= LONGEST_FAILURE) ? why : why.substring(0, LONGEST_FAILURE);
		this.database.sql("update alert_mail set state = ?, attempts = ?, failure = ?, due_at = ? where id = ?")
			.params((attempts >= MOST_ATTEMPTS) ? "dead" : "waiting", attempts, failure, now().plus(pause), mail.id())
			.update();
	}

	List<String> failing(UUID alertId) {
		return this.database.sql("""
				select distinct address from alert_mail where alert_id = ? and state <> 'sent' and attempts > 0
				order by address""").param(alertId).query(String.class).list();
	}

	private OffsetDateTime now() {
		return this.clock.instant().atOffset(ZoneOffset.UTC);
	}

}

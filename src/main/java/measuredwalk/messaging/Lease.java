package measuredwalk.messaging;

import java.time.Duration;

import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.dao.DataAccessException;
import org.springframework.jdbc.core.simple.JdbcClient;

/**
 * A right to do some work that one instance has at a time. It is renewed while the
 * instance lives, and falls to another one some seconds after it died.
 */
public final class Lease {

	/** The database holds a lease this long; whoever holds it counts on a little less. */
	private static final Duration COUNTED_ON = Duration.ofSeconds(12);

	private static final Logger log = LoggerFactory.getLogger(Lease.class);

	private final JdbcClient database;

	private final String name;

	private final String holder;

	private volatile boolean held;

	private volatile long heldUntilNanos;

	Lease(JdbcClient database, String name, String holder) {
		this.database = database;
		this.name = name;
		this.holder = holder;
	}

	/**
	 * Whether this instance may do the work now.
	 * @return true while it holds the lease
	 */
	public boolean held() {
		return this.held && this.heldUntilNanos - System.nanoTime() > 0;
	}

	/** Takes the lease, or makes it last, if no other instance holds it. */
	void renew() {
		long asked = System.nanoTime();
		try {
			this.database.sql("""
					insert into lease (name, holder, expires_at) values (?, ?, current_timestamp)
					on conflict do nothing""").params(this.name, this.holder).update();
			this.held = this.database.sql("""
					update lease set holder = ?, expires_at = current_timestamp + interval '15' second
					where name = ? and (holder = ? or expires_at <= current_timestamp)""")
				.params(this.holder, this.name, this.holder)
				.update() == 1;
			this.heldUntilNanos = asked + COUNTED_ON.toNanos();
		}
		catch (DataAccessException ex) {
			log.warn("The lease '{}' could not be renewed: {}.", this.name, ex.getClass().getSimpleName());
		}
	}

	/** Lets another instance take over at once. */
	void giveUp() {
		if (held()) {
			this.held = false;
			this.database.sql("update lease set expires_at = current_timestamp where name = ? and holder = ?")
				.params(this.name, this.holder)
				.update();
		}
	}

}

package measuredwalk.clinic.access;

import java.time.Clock;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;

import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.security.crypto.password.PasswordEncoder;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** The accounts of the clinic's staff. */
@Service
public class StaffAccounts {

	private static final int SHORTEST_PASSWORD = 10;

	/** A bcrypt hash looks at no more than 72 bytes. */
	private static final int LONGEST_PASSWORD_BYTES = 72;

	private static final String NAME = "[A-Za-z0-9._@-]{2,80}";

	private final JdbcClient database;

	private final PasswordEncoder passwords;

	private final Clock clock;

	StaffAccounts(JdbcClient database, PasswordEncoder passwords, Clock clock) {
		this.database = database;
		this.passwords = passwords;
		this.clock = clock;
	}

	/** An account with the hash of its password. */
	record Credentials(String username, String passwordHash, StaffRole role) {
	}

	Optional<Credentials> credentials(String username) {
		return this.database
			.sql("select username, password_hash, role from staff_account where username = ? and active = true")
			.param(username)
			.query(Credentials.class)
			.optional();
	}

	/**
	 * All accounts, by name.
	 * @return the accounts
	 */
	public List<StaffAccount> all() {
		return this.database.sql("select username, role, active, made_at from staff_account order by username")
			.query((row, number) -> new StaffAccount(row.getString("username"),
					StaffRole.valueOf(row.getString("role")), row.getBoolean("active"),
					row.getObject("made_at", OffsetDateTime.class).toInstant()))
			.list();
	}

	boolean none() {
		return this.database.sql("select count(*) from staff_account").query(Long.class).single() == 0;
	}

	/**
	 * Makes an account that a member of staff asked for.
	 * @param username the name to log in by
	 * @param password the first password
	 * @param role what it may do
	 * @throws IllegalArgumentException when the name is taken or either is not good
	 * enough; the message says how to put it right
	 */
	@Transactional
	public void add(String username, String password, StaffRole role) {
		if (!username.matches(NAME)) {
			throw new IllegalArgumentException("A name has 2 to 80 letters, digits, dots, dashes or @.");
		}
		int bytes = password.getBytes(java.nio.charset.StandardCharsets.UTF_8).length;
		if (password.length() < SHORTEST_PASSWORD || bytes > LONGEST_PASSWORD_BYTES) {
			throw new IllegalArgumentException(
					"A password has at least " + SHORTEST_PASSWORD + " characters and not more than 72.");
		}
		if (make(username, password, role) == 0) {
			throw new IllegalArgumentException("There is an account of that name already.");
		}
	}

	@Transactional
	int make(String username, String password, StaffRole role) {
		return this.database.sql("""
				insert into staff_account (username, password_hash, role, made_at, active) values (?, ?, ?, ?, true)
				on conflict do nothing""")
			.params(username, this.passwords.encode(password), role.name(),
					this.clock.instant().atOffset(ZoneOffset.UTC))
			.update();
	}

	/**
	 * Switches an account off or on again; the last administrator stays on.
	 * @param username the account
	 * @param active whether it may log in
	 * @throws IllegalArgumentException when no administrator would be left
	 */
	@Transactional
	public void setActive(String username, boolean active) {
		this.database.sql("update staff_account set active = ? where username = ?").params(active, username).update();
		long left = this.database.sql("select count(*) from staff_account where active = true and role = 'ADMIN'")
			.query(Long.class)
			.single();
		if (left == 0) {
			throw new IllegalArgumentException("The last administrator cannot be switched off.");
		}
	}

}

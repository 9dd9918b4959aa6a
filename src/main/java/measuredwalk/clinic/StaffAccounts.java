package measuredwalk.clinic;

import java.time.Clock;
import java.time.ZoneOffset;
import java.util.Optional;

import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.security.core.userdetails.User;
import org.springframework.security.core.userdetails.UserDetails;
import org.springframework.security.core.userdetails.UserDetailsService;
import org.springframework.security.core.userdetails.UsernameNotFoundException;
import org.springframework.security.crypto.password.PasswordEncoder;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** The accounts of the clinic's staff. */
@Service
class StaffAccounts implements UserDetailsService {

	private final JdbcClient database;

	private final PasswordEncoder passwords;

	private final Clock clock;

	StaffAccounts(JdbcClient database, PasswordEncoder passwords, Clock clock) {
		this.database = database;
		this.passwords = passwords;
		this.clock = clock;
	}

	@Override
	public UserDetails loadUserByUsername(String username) {
		Optional<UserDetails> found = this.database
			.sql("select username, password_hash, role from staff_account where username = ?")
			.param(username)
			.query((row, number) -> User.withUsername(row.getString("username"))
				.password(row.getString("password_hash"))
				.roles(row.getString("role"))
				.build())
			.optional();
		return found.orElseThrow(() -> new UsernameNotFoundException("There is no such account."));
	}

	boolean none() {
		return this.database.sql("select count(*) from staff_account").query(Long.class).single() == 0;
	}

	@Transactional
	void make(String username, String password, StaffRole role) {
		this.database.sql("insert into staff_account (username, password_hash, role, made_at) values (?, ?, ?, ?)")
			.params(username, this.passwords.encode(password), role.name(),
					this.clock.instant().atOffset(ZoneOffset.UTC))
			.update();
	}

}

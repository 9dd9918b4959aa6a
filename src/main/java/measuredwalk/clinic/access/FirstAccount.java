package measuredwalk.clinic.access;

import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.boot.ApplicationArguments;
import org.springframework.boot.ApplicationRunner;
import org.springframework.stereotype.Component;

/** Makes the first staff account when there is none. */
@Component
class FirstAccount implements ApplicationRunner {

	private static final String REHEARSAL_USERNAME = "clinic";

	private static final String REHEARSAL_PASSWORD = "rehearsal";

	private static final Logger log = LoggerFactory.getLogger(FirstAccount.class);

	private final StaffAccounts accounts;

	private final String username;

	private final String password;

	private final boolean rehearsal;

	FirstAccount(StaffAccounts accounts, @Value("${measuredwalk.staff.username:}") String username,
			@Value("${measuredwalk.staff.password:}") String password,
			@Value("${measuredwalk.rehearsal:false}") boolean rehearsal) {
		this.accounts = accounts;
		this.username = username;
		this.password = password;
		this.rehearsal = rehearsal;
	}

	@Override
	public void run(ApplicationArguments arguments) {
		boolean named = !this.username.isBlank() && !this.password.isBlank();
		if (this.accounts.none()) {
			makeFirst(named);
		}
		if (this.rehearsal && !named) {
			log.info("Rehearsal: the clinic's account is '{}' with the password '{}'.", REHEARSAL_USERNAME,
					REHEARSAL_PASSWORD);
		}
	}

	private void makeFirst(boolean named) {
		if (named) {
			this.accounts.make(this.username, this.password, StaffRole.ADMIN);
		}
		else if (this.rehearsal) {
			this.accounts.make(REHEARSAL_USERNAME, REHEARSAL_PASSWORD, StaffRole.ADMIN);
		}
		else {
			log.warn("There is no clinic account: set measuredwalk.staff.username and measuredwalk.staff.password"
					+ " and start again to make the first one.");
		}
	}

}

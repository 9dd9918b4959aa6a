package measuredwalk.clinic.access;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

import org.springframework.security.authentication.AuthenticationProvider;
import org.springframework.security.authentication.BadCredentialsException;
import org.springframework.security.authentication.UsernamePasswordAuthenticationToken;
import org.springframework.security.core.Authentication;
import org.springframework.security.core.authority.SimpleGrantedAuthority;
import org.springframework.security.core.userdetails.User;
import org.springframework.security.core.userdetails.UserDetails;
import org.springframework.security.crypto.password.PasswordEncoder;
import org.springframework.security.web.authentication.WebAuthenticationDetails;
import org.springframework.stereotype.Component;
import org.springframework.util.function.SingletonSupplier;

/** Lets staff in by name and password, on the pages and over the API alike. */
@Component
class StaffLogin implements AuthenticationProvider {

	private final StaffAccounts accounts;

	private final ProvenPasswords passwords;

	private final LoginThrottle throttle;

	/** Compared when there is no such account, so that both answers take as long. */
	private final Supplier<StaffAccounts.Credentials> nobody;

	StaffLogin(StaffAccounts accounts, ProvenPasswords passwords, LoginThrottle throttle, PasswordEncoder encoder) {
		this.accounts = accounts;
		this.passwords = passwords;
		this.throttle = throttle;
		this.nobody = SingletonSupplier
			.of(() -> new StaffAccounts.Credentials("", encoder.encode("nobody"), StaffRole.NURSE));
	}

	@Override
	public Authentication authenticate(Authentication asked) {
		String name = asked.getName();
		String address = (asked.getDetails() instanceof WebAuthenticationDetails details) ? details.getRemoteAddress()
				: "";
		if (this.throttle.closed(name, address)) {
			throw new TooManyTries();
		}
		Optional<StaffAccounts.Credentials> account = this.accounts.credentials(name);
		boolean right = this.passwords.right(account.orElseGet(this.nobody), String.valueOf(asked.getCredentials()));
		if (account.isEmpty() || !right) {
			this.throttle.failed(name, address);
			throw new BadCredentialsException("The name or the password is wrong.");
		}
		this.throttle.succeeded(name, address);
		return letIn(account.get(), asked);
	}

	private static Authentication letIn(StaffAccounts.Credentials account, Authentication asked) {
		var rights = List.of(new SimpleGrantedAuthority("ROLE_" + account.role().name()));
		UserDetails staff = User.withUsername(account.username()).password("").authorities(rights).build();
		var token = UsernamePasswordAuthenticationToken.authenticated(staff, null, rights);
		token.setDetails(asked.getDetails());
		return token;
	}

	@Override
	public boolean supports(Class<?> kind) {
		return UsernamePasswordAuthenticationToken.class.isAssignableFrom(kind);
	}

}

package measuredwalk.clinic.access;

import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.Map;

import javax.crypto.Mac;
import javax.crypto.spec.SecretKeySpec;

import org.springframework.security.crypto.password.PasswordEncoder;
import org.springframework.stereotype.Component;

/**
 * Checks passwords. The API's callers send theirs with each request, and bcrypt is slow
 * on purpose; so a password that was proved is known again for some minutes by a keyed
 * digest whose key never leaves this process. The stored hash is part of what is
 * digested, so a changed password counts at once.
 */
@Component
class ProvenPasswords {

	private static final String DIGEST = "HmacSHA256";

	private static final Duration KNOWN_FOR = Duration.ofMinutes(5);

	private static final int MOST_KNOWN = 500;

	private final PasswordEncoder passwords;

	private final Clock clock;

	private final SecretKeySpec key;

	private final Map<String, Proof> proofs = new LinkedHashMap<>();

	ProvenPasswords(PasswordEncoder passwords, Clock clock) {
		this.passwords = passwords;
		this.clock = clock;
		byte[] secret = new byte[32];
		new SecureRandom().nextBytes(secret);
		this.key = new SecretKeySpec(secret, DIGEST);
	}

	boolean right(StaffAccounts.Credentials account, String password) {
		byte[] digest = digest(account, password);
		if (known(account.username(), digest)) {
			return true;
		}
		boolean right = this.passwords.matches(password, account.passwordHash());
		if (right) {
			remember(account.username(), digest);
		}
		return right;
	}

	private synchronized boolean known(String username, byte[] digest) {
		Proof proof = this.proofs.get(username);
		return proof != null && proof.until().isAfter(this.clock.instant())
				&& MessageDigest.isEqual(proof.digest(), digest);
	}

	private synchronized void remember(String username, byte[] digest) {
		if (this.proofs.size() >= MOST_KNOWN) {
			this.proofs.clear();
		}
		this.proofs.put(username, new Proof(digest, this.clock.instant().plus(KNOWN_FOR)));
	}

	private byte[] digest(StaffAccounts.Credentials account, String password) {
		try {
			Mac mac = Mac.getInstance(DIGEST);
			mac.init(this.key);
			mac.update(account.passwordHash().getBytes(StandardCharsets.UTF_8));
			return mac.doFinal(password.getBytes(StandardCharsets.UTF_8));
		}
		catch (GeneralSecurityException ex) {
			throw new IllegalStateException("Every Java runtime has " + DIGEST + ", but this one says it has not.", ex);
		}
	}

	@SuppressWarnings("ArrayRecordComponent")
	private record Proof(byte[] digest, Instant until) {
	}

}

package measuredwalk.clinic.access;

import org.springframework.security.core.AuthenticationException;

/** Too many logins failed; the next may be tried after a pause. */
class TooManyTries extends AuthenticationException {

	TooManyTries() {
		super("Too many failed logins. Wait five minutes, then try again.");
	}

}

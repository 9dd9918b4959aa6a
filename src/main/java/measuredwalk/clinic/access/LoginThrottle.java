package measuredwalk.clinic.access;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.Map;

import org.springframework.stereotype.Component;

/**
 * Counts failed logins, so that passwords cannot be tried out. A name is counted together
 * with the address that it is tried from: nobody can lock out a colleague from elsewhere.
 * An address is counted by itself as well, against one password tried on many names.
 */
@Component
class LoginThrottle {

	/** Common practice, no source. */
	private static final int MOST_FOR_NAME = 5;

	/** A clinic shares one address, so it is given more. Common practice, no source. */
	private static final int MOST_FOR_ADDRESS = 40;

	/** Common practice, no source. */
	private static final Duration PAUSE = Duration.ofMinutes(5);

	private static final int MOST_REMEMBERED = 10_000;

	private final Clock clock;

	private final Map<String, Failures> failures = new LinkedHashMap<>();

	LoginThrottle(Clock clock) {
		this.clock = clock;
	}

	/** Whether a login may not even be tried now. */
	synchronized boolean closed(String name, String address) {
		return count(key(name, address)) >= MOST_FOR_NAME || count(address) >= MOST_FOR_ADDRESS;
	}

	synchronized void failed(String name, String address) {
		add(key(name, address));
		add(address);
	}

	synchronized void succeeded(String name, String address) {
		this.failures.remove(key(name, address));
	}

	private int count(String key) {
		Failures found = this.failures.get(key);
		return (found == null || found.last().plus(PAUSE).isBefore(this.clock.instant())) ? 0 : found.count();
	}

	private void add(String key) {
		int before = count(key);
		this.failures.remove(key);
		if (this.failures.size() >= MOST_REMEMBERED) {
			this.failures.remove(this.failures.keySet().iterator().next());
		}
		this.failures.put(key, new Failures(before + 1, this.clock.instant()));
	}

	/** A line break cannot stand in an address, so no name can pretend to be one. */
	private static String key(String name, String address) {
		return address + "\n" + name;
	}

	private record Failures(int count, Instant last) {
	}

}

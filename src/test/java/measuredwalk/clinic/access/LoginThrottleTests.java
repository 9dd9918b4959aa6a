package measuredwalk.clinic.access;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.time.ZoneOffset;
import java.util.concurrent.atomic.AtomicReference;

import org.junit.jupiter.api.Test;

import static org.assertj.core.api.Assertions.assertThat;

class LoginThrottleTests {

	private final AtomicReference<Instant> now = new AtomicReference<>(Instant.parse("2026-03-14T18:30:00Z"));

	private final Clock clock = ((InstantSource) this.now::get).withZone(ZoneOffset.UTC);

	private final LoginThrottle throttle = new LoginThrottle(this.clock);

	private void fail(String name, String address, int times) {
		for (int i = 0; i < times; i++) {
			this.throttle.failed(name, address);
		}
	}

	@Test
	void closesForANameAfterFiveFailures() {
		fail("fern", "10.0.0.1", 4);
		assertThat(this.throttle.closed("fern", "10.0.0.1")).isFalse();
		fail("fern", "10.0.0.1", 1);
		assertThat(this.throttle.closed("fern", "10.0.0.1")).isTrue();
	}

	@Test
	void nobodyCanLockOutAColleagueFromElsewhere() {
		fail("fern", "10.0.0.1", 5);
		assertThat(this.throttle.closed("fern", "10.0.0.2")).isFalse();
	}

	@Test
	void closesForAnAddressThatTriesManyNames() {
		for (int i = 0; i < 40; i++) {
			this.throttle.failed("name" + i, "10.0.0.1");
		}
		assertThat(this.throttle.closed("another", "10.0.0.1")).isTrue();
	}

	@Test
	void opensAgainAfterThePause() {
		fail("fern", "10.0.0.1", 5);
		this.now.updateAndGet((time) -> time.plus(Duration.ofMinutes(6)));
		assertThat(this.throttle.closed("fern", "10.0.0.1")).isFalse();
	}

	@Test
	void aRightPasswordClearsTheCount() {
		fail("fern", "10.0.0.1", 4);
		this.throttle.succeeded("fern", "10.0.0.1");
		fail("fern", "10.0.0.1", 4);
		assertThat(this.throttle.closed("fern", "10.0.0.1")).isFalse();
	}

}

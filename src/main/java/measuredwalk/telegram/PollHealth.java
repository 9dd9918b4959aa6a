package measuredwalk.telegram;

import java.time.Duration;
import java.util.concurrent.atomic.AtomicReference;

import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.boot.health.contributor.Health;
import org.springframework.boot.health.contributor.HealthIndicator;
import org.springframework.boot.health.contributor.Status;
import org.springframework.stereotype.Component;

/**
 * Says how updates come in. When they do not, the application can still serve everything
 * else, so this never turns the whole of it to down: its own status is 'TROUBLED', which
 * stands at {@code /actuator/health/telegram}.
 */
@Component("telegram")
@WithToken
class PollHealth implements HealthIndicator {

	static final Status TROUBLED = new Status("TROUBLED");

	/** Longer than a long poll and a few attempts after it. */
	private static final Duration WORRYING = Duration.ofMinutes(2);

	private static final Logger log = LoggerFactory.getLogger(PollHealth.class);

	private final AtomicReference<State> state = new AtomicReference<>(new State("", System.nanoTime()));

	void well() {
		State before = this.state.getAndSet(new State("", System.nanoTime()));
		if (!before.problem().isEmpty()) {
			log.info("Telegram answers again.");
		}
	}

	/** The same problem is logged once, not at every attempt. */
	void troubled(String problem) {
		State before = this.state.get();
		this.state.set(new State(problem, before.wellNanos()));
		if (!before.problem().equals(problem)) {
			log.error("No updates come from Telegram: {}", problem);
		}
	}

	@Override
	public Health health() {
		State now = this.state.get();
		Duration since = Duration.ofNanos(System.nanoTime() - now.wellNanos());
		boolean well = now.problem().isEmpty() && since.compareTo(WORRYING) < 0;
		Health.Builder health = well ? Health.up() : Health.status(TROUBLED);
		if (!now.problem().isEmpty()) {
			health.withDetail("problem", now.problem());
		}
		return health.withDetail("secondsSinceLastPoll", since.toSeconds()).build();
	}

	private record State(String problem, long wellNanos) {
	}

}

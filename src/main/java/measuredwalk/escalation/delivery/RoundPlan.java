package measuredwalk.escalation.delivery;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

import measuredwalk.escalation.AlertLevel;
import measuredwalk.escalation.OpeningHours;

/**
 * When an alert that nobody has seen is told again, and to whom: clinical rules, 'Piling
 * up'. Staff chats are told in each round; e-mail goes to one address more each time.
 */
final class RoundPlan {

	static final Duration EMERGENCY_PAUSE = Duration.ofMinutes(15);

	static final int SAME_DAY_OPEN_MINUTES = 120;

	private final AlertLevel level;

	private final OpeningHours hours;

	private final List<String> addresses;

	RoundPlan(AlertLevel level, OpeningHours hours, List<String> addresses) {
		this.level = level;
		this.hours = hours;
		this.addresses = addresses;
	}

	/** When it is told first: at once, unless it can wait until the clinic opens. */
	Instant first(Instant raisedAt) {
		return (this.level == AlertLevel.REVIEW) ? this.hours.nextOpen(raisedAt) : raisedAt;
	}

	/** When the round after this one is due, or empty when this is the last. */
	Optional<Instant> after(int round, Instant told) {
		boolean last = round >= Math.max(1, this.addresses.size());
		return switch (this.level) {
			case EMERGENCY -> last ? Optional.empty() : Optional.of(told.plus(EMERGENCY_PAUSE));
			case SAME_DAY ->
				last ? Optional.empty() : Optional.of(this.hours.afterOpenMinutes(told, SAME_DAY_OPEN_MINUTES));
			case REVIEW -> Optional.empty();
		};
	}

	List<String> addresses(int round) {
		return this.addresses.subList(0, Math.min(this.addresses.size(), round + 1));
	}

}

package measuredwalk.clock;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;

/** A clock that runs by itself and can be moved ahead, never back. */
final class RehearsalClock extends Clock {

	private final Clock source;

	private volatile Duration ahead;

	RehearsalClock(Clock source, Duration ahead) {
		this.source = source;
		this.ahead = ahead;
	}

	@Override
	public Instant instant() {
		return this.source.instant().plus(this.ahead);
	}

	/**
	 * Moves the clock forward. A time that is past already leaves it alone.
	 * @param time the time it shall show
	 */
	void moveTo(Instant time) {
		Duration further = Duration.between(instant(), time);
		if (!further.isNegative()) {
			this.ahead = this.ahead.plus(further);
		}
	}

	Duration ahead() {
		return this.ahead;
	}

	@Override
	public ZoneId getZone() {
		return ZoneOffset.UTC;
	}

	@Override
	public Clock withZone(ZoneId zone) {
		return Clock.offset(this.source, this.ahead).withZone(zone);
	}

}

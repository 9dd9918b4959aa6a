package measuredwalk.clock;

import java.time.Instant;
import java.util.Optional;

/**
 * Work that waits for its time, or for a moment to be handed on. The rehearsal clock
 * stops at each time that something is due and lets it happen before it moves on.
 */
public interface TimedWork {

	/**
	 * The earliest time at which something of this work is due.
	 * @return the time, possibly past, or empty when nothing waits
	 */
	Optional<Instant> nextDue();

	/** Does all that is due by now, and returns when it is done. */
	void catchUp();

}

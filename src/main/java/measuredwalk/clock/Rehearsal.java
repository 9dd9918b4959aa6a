package measuredwalk.clock;

import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import org.springframework.beans.factory.ObjectProvider;
import org.springframework.boot.autoconfigure.condition.ConditionalOnBooleanProperty;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;

/** Moves the clock forward and lets everything happen that becomes due on the way. */
@Service
@ConditionalOnBooleanProperty("measuredwalk.rehearsal")
public class Rehearsal {

	private final RehearsalClock clock;

	private final JdbcClient database;

	private final ObjectProvider<TimedWork> timedWork;

	Rehearsal(RehearsalClock clock, JdbcClient database, ObjectProvider<TimedWork> timedWork) {
		this.clock = clock;
		this.database = database;
		this.timedWork = timedWork;
	}

	/**
	 * What the clock shows.
	 * @return the time
	 */
	public Instant now() {
		return this.clock.instant();
	}

	/**
	 * Moves the clock to a time, stopping at each time that something is due, and returns
	 * when all of it has been handed on.
	 * @param time the time to show
	 * @throws IllegalArgumentException when the time is past already
	 */
	public synchronized void moveTo(Instant time) {
		if (time.isBefore(now())) {
			throw new IllegalArgumentException(
					"The rehearsal clock shows " + now() + " and only moves forward: ask for a later time than that.");
		}
		List<TimedWork> work = this.timedWork.orderedStream().toList();
		catchUp(work);
		Optional<Instant> stop = nextStop(work, time);
		while (stop.isPresent()) {
			show(stop.get());
			catchUp(work);
			stop = nextStop(work, time);
		}
		show(time);
		catchUp(work);
	}

	private void show(Instant time) {
		this.clock.moveTo(time);
		this.database.sql("update rehearsal_clock set ahead_millis = ? where id = 1")
			.param(this.clock.ahead().toMillis())
			.update();
	}

	private Optional<Instant> nextStop(List<TimedWork> work, Instant end) {
		Stream<Instant> due = work.stream().flatMap((each) -> each.nextDue().stream());
		return due.filter((time) -> time.isAfter(now()) && time.isBefore(end)).min(Comparator.naturalOrder());
	}

	private static void catchUp(List<TimedWork> work) {
		work.forEach(TimedWork::catchUp);
	}

}

package measuredwalk.telegram;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;

import com.fasterxml.jackson.databind.JsonNode;

/**
 * The updates that the bot has not confirmed, by the public documentation of
 * {@code getUpdates}: kept 24 hours, given again until a request names a higher offset,
 * and given to one request at a time.
 */
final class StandInUpdates {

	private static final Duration KEPT = Duration.ofHours(24);

	private final List<Pending> pending = new ArrayList<>();

	private Duration age = Duration.ZERO;

	private long request;

	private long confirmedBelow;

	private int superseded;

	synchronized void add(long id, JsonNode update) {
		this.pending.add(new Pending(id, update, this.age));
		notifyAll();
	}

	/** Lets time pass, by which old updates are lost. */
	synchronized void pass(Duration time) {
		this.age = this.age.plus(time);
		this.pending.removeIf((each) -> this.age.minus(each.since()).compareTo(KEPT) > 0);
	}

	/**
	 * Waits for updates.
	 * @return the updates, or null when a later request took this one's place
	 */
	synchronized List<JsonNode> get(long offset, int limit, Duration timeout) throws InterruptedException {
		long mine = ++this.request;
		notifyAll();
		if (offset > 0) {
			this.pending.removeIf((each) -> each.id() < offset);
			this.confirmedBelow = offset;
		}
		long end = System.nanoTime() + timeout.toNanos();
		List<JsonNode> ready = ready(offset, limit);
		while (ready.isEmpty() && mine == this.request && end - System.nanoTime() > 0) {
			TimeUnit.NANOSECONDS.timedWait(this, end - System.nanoTime());
			ready = ready(offset, limit);
		}
		if (mine != this.request) {
			this.superseded++;
			return null;
		}
		return ready;
	}

	private List<JsonNode> ready(long offset, int limit) {
		return this.pending.stream().filter((each) -> each.id() >= offset).limit(limit).map(Pending::update).toList();
	}

	synchronized int unconfirmed() {
		return this.pending.size();
	}

	synchronized long confirmedBelow() {
		return this.confirmedBelow;
	}

	/** How many requests had their place taken by another poller's. */
	synchronized int superseded() {
		return this.superseded;
	}

	private record Pending(long id, JsonNode update, Duration since) {
	}

}

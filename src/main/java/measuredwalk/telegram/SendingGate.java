package measuredwalk.telegram;

import java.util.concurrent.locks.LockSupport;

/**
 * The last step before a message leaves. The pace says when a message may go, but on a
 * busy machine some are held up on their way and would then leave in a bunch: here they
 * go one after the other, never quicker than the limit.
 */
final class SendingGate {

	private static final double NANOS_OF_SECOND = 1e9;

	private final long gapNanos;

	private long lastNanos;

	SendingGate(double messagesPerSecond) {
		this.gapNanos = (long) (NANOS_OF_SECOND / messagesPerSecond);
		this.lastNanos = System.nanoTime() - this.gapNanos;
	}

	/** Returns when the message may leave. */
	synchronized void pass() {
		long wait = this.lastNanos + this.gapNanos - System.nanoTime();
		while (wait > 0) {
			LockSupport.parkNanos(wait);
			wait = this.lastNanos + this.gapNanos - System.nanoTime();
		}
		this.lastNanos = System.nanoTime();
	}

}

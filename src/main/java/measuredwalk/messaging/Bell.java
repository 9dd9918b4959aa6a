package measuredwalk.messaging;

import java.time.Duration;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;

import org.springframework.transaction.support.TransactionSynchronization;
import org.springframework.transaction.support.TransactionSynchronizationManager;

/**
 * Wakes a worker that waits for work. Rung twice before anyone hears it, it wakes once.
 */
final class Bell {

	private final Semaphore rung = new Semaphore(0);

	void ring() {
		if (this.rung.availablePermits() == 0) {
			this.rung.release();
		}
	}

	/** Rings once the work of this transaction can be seen by others. */
	void ringAfterCommit() {
		if (!TransactionSynchronizationManager.isSynchronizationActive()) {
			ring();
			return;
		}
		TransactionSynchronizationManager.registerSynchronization(new TransactionSynchronization() {

			@Override
			public void afterCommit() {
				ring();
			}

		});
	}

	/** Waits for a ring, but not longer than a time. An interrupt ends the wait. */
	void await(Duration longest) {
		try {
			var unused = this.rung.tryAcquire(longest.toNanos(), TimeUnit.NANOSECONDS);
		}
		catch (InterruptedException ex) {
			Thread.currentThread().interrupt();
		}
	}

}

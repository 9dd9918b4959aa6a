package measuredwalk.messaging;

import java.util.ArrayList;
import java.util.List;
import java.util.Queue;
import java.util.concurrent.ConcurrentLinkedQueue;

import org.jspecify.annotations.Nullable;

import org.springframework.stereotype.Component;
import org.springframework.transaction.support.TransactionTemplate;

/**
 * Commits the small writes of several threads together: a commit waits for the disk, and
 * while one waits the writes of the others gather for the next.
 */
@Component
class SharedCommits {

	private final TransactionTemplate transaction;

	private final Queue<Write> waiting = new ConcurrentLinkedQueue<>();

	private final Object committing = new Object();

	SharedCommits(TransactionTemplate transaction) {
		this.transaction = transaction;
	}

	/**
	 * Writes something. When this returns it is committed.
	 * @param write what is written
	 * @throws RuntimeException what the write or its commit threw; then nothing of it is
	 * written
	 */
	void run(Runnable write) {
		Write mine = new Write(write);
		this.waiting.add(mine);
		synchronized (this.committing) {
			if (!mine.over) {
				commitAll();
			}
		}
		if (mine.failure != null) {
			throw mine.failure;
		}
	}

	private void commitAll() {
		List<Write> writes = new ArrayList<>();
		for (Write each = this.waiting.poll(); each != null; each = this.waiting.poll()) {
			writes.add(each);
		}
		if (writes.size() == 1 || !committed(writes)) {
			writes.forEach(this::commitAlone);
		}
	}

	/** One write that cannot be made must not keep the others from being made. */
	private boolean committed(List<Write> writes) {
		try {
			this.transaction.executeWithoutResult((status) -> writes.forEach((each) -> each.write.run()));
			writes.forEach((each) -> each.over = true);
			return true;
		}
		catch (RuntimeException ex) {
			return false;
		}
	}

	private void commitAlone(Write each) {
		try {
			this.transaction.executeWithoutResult((status) -> each.write.run());
		}
		catch (RuntimeException ex) {
			each.failure = ex;
		}
		each.over = true;
	}

	/** A write that waits; what became of it is seen by whoever holds the lock next. */
	private static final class Write {

		private final Runnable write;

		private boolean over;

		private @Nullable RuntimeException failure;

		private Write(Runnable write) {
			this.write = write;
		}

	}

}

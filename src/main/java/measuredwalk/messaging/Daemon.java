package measuredwalk.messaging;

import java.util.concurrent.TimeUnit;

/** A thread of its own for work that goes on as long as the application. */
final class Daemon {

	private static final long LONGEST_END_SECONDS = 10;

	private Daemon() {
	}

	static Thread start(String name, Runnable work) {
		Thread thread = new Thread(work, name);
		thread.setDaemon(true);
		thread.start();
		return thread;
	}

	static void awaitEnd(Thread thread) {
		try {
			thread.join(TimeUnit.SECONDS.toMillis(LONGEST_END_SECONDS));
		}
		catch (InterruptedException ex) {
			Thread.currentThread().interrupt();
		}
	}

}

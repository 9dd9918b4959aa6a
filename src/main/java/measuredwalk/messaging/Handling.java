package measuredwalk.messaging;

/**
 * Marks the thread that handles a message. What is written then answers somebody who
 * waits; what is written at any other time does not.
 */
final class Handling {

	private static final ThreadLocal<Boolean> inProgress = ThreadLocal.withInitial(() -> false);

	private Handling() {
	}

	static boolean inProgress() {
		return inProgress.get();
	}

	static void run(Runnable handling) {
		inProgress.set(true);
		try {
			handling.run();
		}
		finally {
			inProgress.remove();
		}
	}

}

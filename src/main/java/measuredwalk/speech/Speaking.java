package measuredwalk.speech;

import java.util.function.Supplier;

/**
 * How whoever is written to just now is spoken to. One message, prompt or notice is about
 * one household, and its whole way is one thread's work.
 */
public final class Speaking {

	private static final ThreadLocal<Speech> NOW = ThreadLocal.withInitial(Speech::usual);

	private Speaking() {
	}

	/**
	 * The speech that holds now.
	 * @return the one bound to this thread, or the usual one
	 */
	public static Speech now() {
		return NOW.get();
	}

	/**
	 * Does something while a household is spoken to.
	 * @param <T> what comes of it
	 * @param speech how the household is spoken to
	 * @param work what to do
	 * @return what came of it
	 */
	public static <T> T as(Speech speech, Supplier<T> work) {
		Speech before = NOW.get();
		NOW.set(speech);
		try {
			return work.get();
		}
		finally {
			NOW.set(before);
		}
	}

	/**
	 * Does something while a household is spoken to.
	 * @param speech how the household is spoken to
	 * @param work what to do
	 */
	public static void as(Speech speech, Runnable work) {
		as(speech, () -> {
			work.run();
			return speech;
		});
	}

	/**
	 * The household has just chosen another speech: what follows goes by it.
	 * @param speech the speech
	 */
	public static void change(Speech speech) {
		NOW.set(speech);
	}

}

package measuredwalk.tolerance;

import java.io.PrintStream;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;

/**
 * Prints the processor time of this thread for one suggestion from a whole journal, which
 * other work on the machine disturbs less than the clock's.
 */
final class SuggestionCpuTime {

	private static final int WARM_UP = 300;

	private static final int MEASURED = 200;

	private static final double NANOS = 1e6;

	private SuggestionCpuTime() {
	}

	/**
	 * Measures.
	 * @param arguments days of the journal, 365 when none are given
	 */
	public static void main(String[] arguments) {
		SuggestionBenchmark benchmark = new SuggestionBenchmark();
		benchmark.days = (arguments.length > 0) ? Integer.parseInt(arguments[0]) : 365;
		benchmark.tellOfEveryDay();
		ThreadMXBean threads = ManagementFactory.getThreadMXBean();
		double[] millis = new double[MEASURED];
		double minutes = 0;
		for (int run = -WARM_UP; run < MEASURED; run++) {
			long before = threads.getCurrentThreadCpuTime();
			minutes = benchmark.wholeJournal().minutes();
			millis[Math.max(0, run)] = (threads.getCurrentThreadCpuTime() - before) / NANOS;
		}
		Arrays.sort(millis);
		PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
		out.printf("%d days, %d runs: least %.2f ms, median %.2f ms, most %.2f ms; suggestion %.0f minutes%n",
				benchmark.days, MEASURED, millis[0], millis[MEASURED / 2], millis[MEASURED - 1], minutes);
	}

}

package measuredwalk.tolerance;

import java.io.PrintStream;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Locale;
import java.util.function.Supplier;

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
		PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
		out.printf("%d days, whole journal: %s%n", benchmark.days, measured(benchmark::wholeJournal));
		out.printf("%d days, remembered: %s%n", benchmark.days, measured(benchmark::rememberedJournal));
	}

	private static String measured(Supplier<Suggestion> suggestion) {
		ThreadMXBean threads = ManagementFactory.getThreadMXBean();
		double[] millis = new double[MEASURED];
		double minutes = 0;
		for (int run = -WARM_UP; run < MEASURED; run++) {
			long before = threads.getCurrentThreadCpuTime();
			minutes = suggestion.get().minutes();
			millis[Math.max(0, run)] = (threads.getCurrentThreadCpuTime() - before) / NANOS;
		}
		Arrays.sort(millis);
		return String.format(Locale.ROOT,
				"%d runs, least %.3f ms, median %.3f ms, most %.3f ms; suggestion %.0f minutes", MEASURED, millis[0],
				millis[MEASURED / 2], millis[MEASURED - 1], minutes);
	}

}

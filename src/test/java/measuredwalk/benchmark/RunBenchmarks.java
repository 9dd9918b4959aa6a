package measuredwalk.benchmark;

import java.nio.file.Path;
import java.util.Collection;
import java.util.Locale;

import org.junit.jupiter.api.Test;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.results.format.ResultFormatType;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.Options;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import org.openjdk.jmh.runner.options.TimeValue;

import static org.assertj.core.api.Assertions.assertThat;

/**
 * Runs the JMH benchmarks whose name matches the property {@code benchmarks}, each
 * iteration for {@code benchmark.seconds}; run by the profile {@code benchmarks}.
 */
class RunBenchmarks {

	private static final int ITERATIONS = 3;

	@Test
	void writesTheResult() throws RunnerException {
		Path result = Path.of("target", "jmh-result.json");
		TimeValue time = TimeValue.seconds(Long.parseLong(System.getProperty("benchmark.seconds", "4")));
		Options options = new OptionsBuilder().include(System.getProperty("benchmarks", "Benchmark"))
			.forks(1)
			.threads(1)
			.warmupIterations(ITERATIONS)
			.warmupTime(time)
			.measurementIterations(ITERATIONS)
			.measurementTime(time)
			.jvmArgs("-Xmx1g", "-XX:+UseSerialGC", "-Dfile.encoding=UTF-8")
			.shouldFailOnError(true)
			.resultFormat(ResultFormatType.JSON)
			.result(result.toString())
			.build();
		Collection<RunResult> results = new Runner(options).run();
		assertThat(results).isNotEmpty();
		results.forEach(RunBenchmarks::printPerProcessorSecond);
		assertThat(result).isNotEmptyFile();
	}

	/**
	 * Where a benchmark counts its processor time, the figure that crowding changes
	 * least.
	 */
	private static void printPerProcessorSecond(RunResult result) {
		var counted = result.getSecondaryResults();
		if (counted.containsKey("processorMillis")) {
			double seconds = counted.get("processorMillis").getScore() / 1000;
			double operations = counted.get("operations").getScore();
			System.out.printf(Locale.ROOT, "%s %s: %.0f operations in a second of processor time%n",
					result.getParams().getBenchmark(), readers(result), operations / seconds);
		}
	}

	private static String readers(RunResult result) {
		return result.getParams().getParamsKeys().stream().map(result.getParams()::getParam).toList().toString();
	}

}

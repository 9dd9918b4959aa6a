package measuredwalk.reading.benchmark;

import java.util.List;
import java.util.concurrent.TimeUnit;

import measuredwalk.benchmark.ProcessorTime;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;

/** Texts of the public set of durations read in a second by one thread, by reader. */
@State(Scope.Thread)
public class DurationReadersBenchmark {

	@Param
	public DurationReader reader = DurationReader.MEASURED_WALK;

	private final List<DurationLine> lines = DurationLine.all();

	private int next;

	@Benchmark
	@BenchmarkMode(Mode.Throughput)
	@OutputTimeUnit(TimeUnit.SECONDS)
	public List<Double> oneText(ProcessorTime time) {
		time.operation();
		this.next = (this.next + 1) % this.lines.size();
		return this.reader.seconds(this.lines.get(this.next).text());
	}

}

package measuredwalk.reading.benchmark;

import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Set;
import java.util.concurrent.TimeUnit;

import measuredwalk.benchmark.ProcessorTime;
import measuredwalk.reading.MessageReader;
import measuredwalk.reading.OwnerMessage;
import measuredwalk.reading.Question;
import measuredwalk.reading.Reading;
import measuredwalk.reading.score.LabelledMessage;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;

/** Messages of the develop corpus read in a second by one thread. */
@State(Scope.Thread)
public class MessagesBenchmark {

	private static final int LONG = 20_000;

	private final MessageReader reader = MessageReader.standard();

	private final List<OwnerMessage> messages = LabelledMessage.read(Path.of("fixtures", "reading", "develop.jsonl"))
		.stream()
		.map(LabelledMessage::message)
		.toList();

	private final OwnerMessage longMessage = longMessage(this.messages);

	private int next;

	private static OwnerMessage longMessage(List<OwnerMessage> messages) {
		String all = String.join(". ", messages.stream().map(OwnerMessage::text).toList());
		return new OwnerMessage(all.substring(0, LONG), Question.WALK, LocalDateTime.of(2026, 3, 14, 18, 30), "Bracken",
				Set.of());
	}

	@Benchmark
	@BenchmarkMode(Mode.Throughput)
	@OutputTimeUnit(TimeUnit.SECONDS)
	public Reading oneMessage(ProcessorTime time) {
		time.operation();
		this.next = (this.next + 1) % this.messages.size();
		return this.reader.read(this.messages.get(this.next));
	}

	@Benchmark
	@BenchmarkMode(Mode.AverageTime)
	@OutputTimeUnit(TimeUnit.MILLISECONDS)
	public Reading aMessageOfTwentyThousandCharacters(ProcessorTime time) {
		time.operation();
		return this.reader.read(this.longMessage);
	}

}

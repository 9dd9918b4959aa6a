package measuredwalk.tolerance;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;

import measuredwalk.signs.Severity;
import measuredwalk.signs.Sign;
import measuredwalk.signs.SignKind;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** Time for one suggestion from the whole journal, and from a course that is kept. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 3, time = 2)
public class SuggestionBenchmark {

	private static final LocalDate FIRST = LocalDate.of(2020, 1, 6);

	/** A month, a year, five years. */
	@Param({ "30", "365", "1825" })
	public int days;

	private final ToleranceModel model = new ToleranceModel();

	private List<ToleranceEvent> history = List.of();

	@Setup
	public void tellOfEveryDay() {
		List<ToleranceEvent> told = new ArrayList<>();
		told.add(new ToleranceEvent.DogEnrolled(FIRST, new WalkPlan(20, 2, 6, 45), 24.0, 11.0, true, null));
		Random random = new Random(1);
		for (int day = 1; day <= this.days; day++) {
			LocalDate date = FIRST.plusDays(day);
			told.add(new ToleranceEvent.MorningSeen(date, signs(random, SignKind.STIFFNESS), null, null, false));
			told.add(walk(date, 8, random));
			told.add(walk(date, 17, random));
		}
		this.history = told;
	}

	private static ToleranceEvent walk(LocalDate date, int hour, Random random) {
		double minutes = 18 + random.nextInt(7);
		return new ToleranceEvent.WalkTaken(date, LocalTime.of(hour, 0), minutes, minutes, minutes, null,
				signs(random, SignKind.SLOWING), false);
	}

	private static List<Sign> signs(Random random, SignKind kind) {
		Sign sign = new Sign(kind, true, Severity.MILD, null, null, null, null);
		return (random.nextDouble() < 0.1) ? List.of(sign) : List.of();
	}

	@Benchmark
	public Suggestion wholeJournal() {
		return this.model.suggest(this.history, FIRST.plusDays(this.days + 1L));
	}

}

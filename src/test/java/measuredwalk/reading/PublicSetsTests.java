package measuredwalk.reading;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import static org.assertj.core.api.Assertions.assertThat;

/**
 * Scores {@code read quantities} on the public sets in fixtures/public/language, whose
 * README names the sources. The least shares are what was reached, so that none is lost.
 */
class PublicSetsTests {

	private static final Path REPORTS = Path.of("target", "reading-report");

	@ParameterizedTest
	@CsvSource({ "durations, 1.0", "distances, 1.0", "numbers, 1.0", "number-ranges, 0.979", "temperatures, 1.0",
			"clock-times, 0.98", "time-ranges, 1.0" })
	void readsAtLeastTheReachedShareOfTheLinesInRange(String set, double least) throws IOException {
		PublicSet.Score score = PublicSet.load(set).core().score();
		write(score);
		assertThat(score.share()).as("%s: %s", score.set(), score.failures()).isGreaterThanOrEqualTo(least);
	}

	@ParameterizedTest
	@CsvSource({ "durations, 117, 0.948", "distances, 90, 0.955", "numbers, 112, 0.964", "number-ranges, 49, 0.979",
			"temperatures, 28, 1.0", "clock-times, 56, 0.98", "time-ranges, 32, 1.0" })
	void readsAtLeastTheReachedShareOfAllLines(String set, int lines, double least) throws IOException {
		PublicSet.Score score = PublicSet.load(set).score();
		write(score);
		assertThat(score.lines()).isEqualTo(lines);
		assertThat(score.share()).as("%s: %s", score.set(), score.failures()).isGreaterThanOrEqualTo(least);
	}

	@ParameterizedTest
	@CsvSource({ "durations", "distances", "numbers", "number-ranges", "temperatures", "clock-times", "time-ranges" })
	void readsEveryLineThatIsNotNamedAsOutOfScope(String set) {
		Set<String> apart = OutOfScope.ids();
		PublicSet.Score score = PublicSet.load(set).without(apart).score();
		assertThat(score.failures()).isEmpty();
	}

	private static void write(PublicSet.Score score) throws IOException {
		Files.createDirectories(REPORTS);
		List<String> failures = score.failures()
			.stream()
			.map((failure) -> "%s%n  text     %s%n  expected %s%n  got      %s".formatted(failure.id(), failure.text(),
					failure.expected(), failure.got()))
			.toList();
		String head = "%s: %d of %d right%n%n".formatted(score.set(), score.right(), score.lines());
		Files.writeString(REPORTS.resolve(score.set().replace(' ', '-') + ".txt"), head + String.join("\n", failures));
	}

}

package measuredwalk.reading.benchmark;

import java.util.Map;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

import static org.assertj.core.api.Assertions.assertThat;

/**
 * The readers that are measured side by side are driven as they should be. The sets that
 * they are compared on are named in fixtures/public/language/README.md.
 */
class DurationReadersTests {

	@ParameterizedTest
	@EnumSource(names = { "MEASURED_WALK", "RECOGNIZERS_TEXT" })
	void readsAPlainDuration(DurationReader reader) {
		assertThat(reader.seconds("we walked for 25 minutes")).containsExactly(1500.0);
	}

	@Test
	void nattyReadsHowLongAgo() {
		assertThat(DurationReader.NATTY.seconds("25 minutes ago")).containsExactly(1500.0);
	}

	@Test
	void javaTimeReadsTheShortForm() {
		assertThat(DurationReader.JAVA_TIME.seconds("1h 5m")).containsExactly(3900.0);
	}

	@Test
	void noOtherReaderIsRightMoreOften() {
		Map<DurationReader, Integer> right = DurationComparison.right();
		Integer ours = right.remove(DurationReader.MEASURED_WALK);
		assertThat(right.values()).allSatisfy((others) -> assertThat(others).isLessThan(ours));
	}

}

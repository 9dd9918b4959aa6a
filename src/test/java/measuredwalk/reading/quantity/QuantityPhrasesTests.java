package measuredwalk.reading.quantity;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.time.LocalDateTime;
import java.util.Objects;
import java.util.stream.Stream;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

import static org.assertj.core.api.Assertions.assertThat;

/** English usage of owners' amounts: common practice, no source. */
class QuantityPhrasesTests {

	private static final LocalDateTime NOW = LocalDateTime.of(2026, 3, 14, 18, 30);

	@ParameterizedTest
	@MethodSource("phrases")
	void readsThePhrase(String line) {
		int arrow = line.lastIndexOf(" => ");
		assertThat(Rendered.quantities(line.substring(0, arrow), NOW)).as(line).isEqualTo(line.substring(arrow + 4));
	}

	static Stream<String> phrases() throws IOException {
		try (InputStream stream = QuantityPhrasesTests.class.getResourceAsStream("phrases.txt")) {
			String all = new String(Objects.requireNonNull(stream).readAllBytes(), StandardCharsets.UTF_8);
			return all.lines().filter((line) -> !line.isBlank() && !line.startsWith("# "));
		}
	}

}

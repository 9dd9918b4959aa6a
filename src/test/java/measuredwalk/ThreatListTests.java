package measuredwalk;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

import static org.assertj.core.api.Assertions.assertThat;

/** The list of threats promises nothing that is not tested. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class ThreatListTests {

	private static final Pattern TEST = Pattern.compile("`([A-Z]\\w+(?:Tests|Story|Contract))(?:\\.(\\w+))?`");

	private Map<String, String> sources = Map.of();

	@BeforeAll
	void readSources() throws IOException {
		try (Stream<Path> files = Files.walk(Path.of("src/test/java"))) {
			this.sources = files.filter((file) -> file.toString().endsWith(".java"))
				.collect(Collectors.toMap((file) -> file.getFileName().toString().replace(".java", ""),
						ThreatListTests::text, (one, other) -> one + other));
		}
	}

	@ParameterizedTest
	@MethodSource("testsNamed")
	void everyTestThatIsNamedIsThere(String type, String method) {
		assertThat(this.sources).containsKey(type);
		assertThat(this.sources.get(type)).contains(method.isEmpty() ? type : "void " + method + "(");
	}

	static Stream<String[]> testsNamed() {
		return TEST.matcher(text(Path.of("docs/security.md")))
			.results()
			.map((MatchResult named) -> new String[] { named.group(1),
					(named.group(2) != null) ? named.group(2) : "" });
	}

	private static String text(Path file) {
		try {
			return Files.readString(file);
		}
		catch (IOException ex) {
			throw new java.io.UncheckedIOException(ex);
		}
	}

}

package measuredwalk.command;

import java.io.BufferedReader;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

import static org.assertj.core.api.Assertions.assertThat;

class ReplayTests {

	private static final String DOG = """
			{"event":"dog","dog":"d1","date":"2026-01-05","planMinutes":20,"walksPerDay":2,"minMinutes":6,"maxMinutes":45,"weightKg":24,"ageYears":11}
			""";

	private static final String WALK = """
			{"event":"walk","dog":"d1","date":"2026-01-06","time":"08:00","minutes":21.5,"distanceMetres":1400,"signs":[{"sign":"slowing","severity":"mild","onsetMinute":16}]}
			""";

	private static final String SUGGEST = """
			{"event":"suggest","dog":"d1","date":"2026-01-07"}
			""";

	@Test
	void suggestionHasAllAgreedFields() throws IOException {
		JsonNode answer = replay(DOG + WALK + SUGGEST).get(0);
		assertThat(answer.propertyNames()).containsExactly("dog", "date", "walks", "minutes", "minutesLow",
				"minutesHigh", "chanceOfTrouble", "toleranceMedian", "toleranceLow", "toleranceHigh", "advice",
				"reasons");
		assertThat(answer.path("date").stringValue()).isEqualTo("2026-01-07");
		assertThat(answer.path("walks").intValue()).isEqualTo(2);
		assertThat(answer.path("reasons").get(0).stringValue()).matches("[a-z-]+");
	}

	@Test
	void onlySuggestEventsAreAnswered() throws IOException {
		assertThat(replay(DOG + WALK)).isEmpty();
	}

	@Test
	void dogsAreKeptApart() throws IOException {
		String other = DOG.replace("d1", "d2") + SUGGEST.replace("d1", "d2");
		JsonNode alone = replay(other).get(0);
		assertThat(replay(DOG + WALK + other).get(0)).isEqualTo(alone);
	}

	@Test
	void planKeepsWhatItDoesNotSay() throws IOException {
		String plan = """
				{"event":"plan","dog":"d1","date":"2026-01-06","planMinutes":18}
				""";
		assertThat(replay(DOG + plan + SUGGEST).get(0).path("walks").intValue()).isEqualTo(2);
	}

	static Stream<Arguments> badLines() {
		return Stream.of(
				Arguments.of("{\"event\":\"walk\",\"dog\":\"d1\",\"date\":\"2026-01-06\"}", "'minutes' is required"),
				Arguments.of("{\"event\":\"walk\",\"dog\":\"d1\",\"minutes\":5}", "'date' is required"),
				Arguments.of("{\"event\":\"suggest\",\"date\":\"2026-01-06\"}", "'dog' is required"),
				Arguments.of("{\"event\":\"suggest\",\"dog\":\"d9\",\"date\":\"2026-01-06\"}", "'d9' is not known"),
				Arguments.of("{\"event\":\"suggest\",\"dog\":\"d1\",\"date\":\"2026-01-01\"}",
						"days must not run back"),
				Arguments.of("{\"event\":\"suggest\",\"dog\":\"d1\",\"date\":\"soon\"}", "ISO 8601"),
				Arguments.of("{\"event\":\"feed\",\"dog\":\"d1\",\"date\":\"2026-01-06\"}", "'event' must be"),
				Arguments.of("{\"event\":\"dog\",\"dog\":\"d3\",\"date\":\"2026-01-06\"}", "'planMinutes' is required"),
				Arguments.of("nonsense", "not valid JSON"));
	}

	@ParameterizedTest
	@MethodSource("badLines")
	void badLineIsNamedAndTheNextIsAnswered(String line, String message) throws IOException {
		List<JsonNode> answers = replay(DOG + line + "\n" + SUGGEST);
		assertThat(answers.get(0).path("line").intValue()).isEqualTo(2);
		assertThat(answers.get(0).path("error").stringValue()).contains(message);
		assertThat(answers.get(1).path("dog").stringValue()).isEqualTo("d1");
	}

	private static List<JsonNode> replay(String lines) throws IOException {
		ByteArrayOutputStream output = new ByteArrayOutputStream();
		Tool.named(List.of("replay"))
			.orElseThrow()
			.run(new BufferedReader(new StringReader(lines)), new PrintStream(output, true, StandardCharsets.UTF_8));
		JsonMapper json = new JsonMapper();
		return output.toString(StandardCharsets.UTF_8).lines().map((line) -> json.readTree(line)).toList();
	}

}

package measuredwalk.command;

import java.io.BufferedReader;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.util.List;

import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

import static org.assertj.core.api.Assertions.assertThat;

class ReadTests {

	private static List<JsonNode> run(String tool, String... lines) throws IOException {
		ByteArrayOutputStream bytes = new ByteArrayOutputStream();
		Tool found = Tool.named(List.of(tool.split(" "))).orElseThrow();
		found.run(new BufferedReader(new StringReader(String.join("\n", lines))),
				new PrintStream(bytes, true, StandardCharsets.UTF_8));
		return bytes.toString(StandardCharsets.UTF_8).lines().map(JsonMapper.shared()::readTree).toList();
	}

	@Test
	void answersEveryLineInOrderAndGoesOnAfterABadOne() throws IOException {
		List<JsonNode> answers = run("read",
				"{\"id\":\"a\",\"question\":\"walk\",\"now\":\"2026-03-14T18:30\",\"text\":\"25 mins, a bit stiff\"}",
				"no json", "{\"id\":\"b\",\"question\":\"walk\",\"now\":\"2026-03-14T18:30\"}",
				"{\"id\":\"c\",\"question\":\"morning\",\"now\":\"2026-03-14T07:30\",\"text\":\"fine\"}");
		assertThat(answers).hasSize(4);
		assertThat(answers.get(0).at("/walks/0/minutes").asDouble()).isEqualTo(25);
		assertThat(answers.get(0).at("/signs/0/severity").asString()).isEqualTo("mild");
		assertThat(answers.get(1).path("error").asString()).contains("JSON");
		assertThat(answers.get(2).path("error").asString()).contains("'text'");
		assertThat(answers.get(3).path("overall").asString()).isEqualTo("usual");
	}

	@Test
	void tellsTheContextOfAFinding() throws IOException {
		List<JsonNode> answers = run("read context",
				"{\"id\":\"x\",\"text\":\"She denies any cough.\",\"start\":15,\"end\":20}",
				"{\"id\":\"y\",\"text\":\"She has a cough.\"}");
		assertThat(answers.get(0).path("negated").asBoolean()).isTrue();
		assertThat(answers.get(0).path("experiencer").asString()).isEqualTo("patient");
		assertThat(answers.get(1).path("error").asString()).contains("'start'");
	}

}

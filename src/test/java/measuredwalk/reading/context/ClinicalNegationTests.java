package measuredwalk.reading.context;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

import measuredwalk.reading.MessageReader;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

import static org.assertj.core.api.Assertions.assertThat;

/**
 * Negation against a published set: chapmanbe/negex,
 * genConText/rsAnnotations-1-120-random.txt (Apache-2.0), the half given to developers.
 */
class ClinicalNegationTests {

	private static final MessageReader READER = MessageReader.standard();

	@Test
	void findsDenialsInClinicalSentences() throws IOException {
		int right = 0;
		int wrong = 0;
		for (String line : Files
			.readAllLines(Path.of("fixtures", "public", "language", "negation-clinical.given.jsonl"))) {
			JsonNode label = JsonMapper.shared().readTree(line);
			boolean expected = label.at("/expected/negated").asBoolean();
			boolean read = READER
				.context(label.get("text").asString(), label.get("start").asInt(), label.get("end").asInt())
				.negated();
			right += (expected && read) ? 1 : 0;
			wrong += (expected != read) ? 1 : 0;
		}
		assertThat(2.0 * right / (2.0 * right + wrong)).isGreaterThanOrEqualTo(0.95);
	}

}

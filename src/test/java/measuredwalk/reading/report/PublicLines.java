package measuredwalk.reading.report;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The lines of the given half of a public set. */
final class PublicLines {

	private PublicLines() {
	}

	static List<JsonNode> of(String set) {
		try {
			return Files.readAllLines(Path.of("fixtures", "public", "language", set + ".given.jsonl"))
				.stream()
				.map(JsonMapper.shared()::readTree)
				.toList();
		}
		catch (IOException ex) {
			throw new UncheckedIOException(ex);
		}
	}

}

package measuredwalk.reading.score;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

import measuredwalk.reading.OwnerMessage;
import measuredwalk.reading.Question;
import measuredwalk.signs.Coded;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * A message with what should be read from it.
 *
 * @param id its id
 * @param message the message
 * @param expected the labels
 */
public record LabelledMessage(String id, OwnerMessage message, JsonNode expected) {

	private static final JsonMapper JSON = JsonMapper.shared();

	/**
	 * Reads a file of labelled messages.
	 * @param file JSON Lines
	 * @return the messages
	 */
	public static List<LabelledMessage> read(Path file) {
		try {
			return Files.readAllLines(file)
				.stream()
				.filter((line) -> !line.isBlank())
				.map((line) -> of(JSON.readTree(line)))
				.toList();
		}
		catch (IOException ex) {
			throw new UncheckedIOException("Cannot read " + file, ex);
		}
	}

	private static LabelledMessage of(JsonNode line) {
		Set<String> medications = new HashSet<>();
		line.path("medications").forEach((kind) -> medications.add(kind.asString()));
		OwnerMessage message = new OwnerMessage(line.get("text").asString(),
				Coded.of(Question.class, line.get("question").asString()),
				LocalDateTime.parse(line.get("now").asString()), line.path("dog").asString(null), medications,
				line.path("language").asString(OwnerMessage.ENGLISH));
		return new LabelledMessage(line.get("id").asString(), message, line.get("expected"));
	}

}

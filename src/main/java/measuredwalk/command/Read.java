package measuredwalk.command;

import java.time.LocalDateTime;
import java.time.format.DateTimeParseException;
import java.util.HashSet;
import java.util.Set;

import measuredwalk.reading.MessageReader;
import measuredwalk.reading.OwnerMessage;
import measuredwalk.reading.Question;
import measuredwalk.signs.Coded;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/** Reads owners' messages: {@code read}. */
final class Read extends LineTool {

	private final MessageReader reader = MessageReader.standard();

	@Override
	protected ObjectNode answer(JsonNode line) {
		return ReadingJson.of(id(line), this.reader.read(message(line)));
	}

	static OwnerMessage message(JsonNode line) {
		Question question = Coded.of(Question.class, required(line, "question"));
		Set<String> medications = new HashSet<>();
		line.path("medications").forEach((kind) -> medications.add(kind.asString()));
		String dog = line.path("dog").isString() ? line.path("dog").asString() : null;
		return new OwnerMessage(required(line, "text"), question, now(required(line, "now")), dog, medications,
				line.path("language").asString(OwnerMessage.ENGLISH));
	}

	private static LocalDateTime now(String text) {
		try {
			return LocalDateTime.parse((text.length() > 19) ? text.substring(0, 19) : text.replace("Z", ""));
		}
		catch (DateTimeParseException ex) {
			throw new IllegalArgumentException("'now' must be a time such as 2026-03-14T18:30, not '" + text + "'", ex);
		}
	}

}

package measuredwalk.reading;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

import measuredwalk.command.ReadQuantities;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * A public test set of quantities: loads it, scores the tool {@code read quantities} on
 * it and names the failures. A line is right only when the list of its kind has exactly
 * the expected entries in order.
 */
final class PublicSet {

	private static final Path FOLDER = Path.of("fixtures", "public", "language");

	private static final JsonMapper JSON = JsonMapper.builder().build();

	private final String name;

	private final List<JsonNode> lines;

	private PublicSet(String name, List<JsonNode> lines) {
		this.name = name;
		this.lines = lines;
	}

	/** A line that was read otherwise than expected. */
	record Failure(String id, String text, String expected, String got) {
	}

	/** How many lines of how many are right. */
	record Score(String set, int right, int lines, List<Failure> failures) {

		double share() {
			return this.lines == 0 ? 1 : (double) this.right / this.lines;
		}

	}

	/**
	 * Loads the given half of a set.
	 * @param name its name, such as {@code durations}
	 * @return the set
	 */
	static PublicSet load(String name) {
		try (var lines = Files.lines(FOLDER.resolve(name + ".given.jsonl"))) {
			return new PublicSet(name, lines.map(JSON::readTree).toList());
		}
		catch (IOException ex) {
			throw new UncheckedIOException(ex);
		}
	}

	/** The lines in the range that the tool needs. */
	PublicSet core() {
		return new PublicSet(this.name + " (core)",
				this.lines.stream().filter((line) -> line.path("core").asBoolean(true)).toList());
	}

	/** The lines without those of which an owner would never type the like. */
	PublicSet without(Set<String> ids) {
		return new PublicSet(this.name + " (in scope)",
				this.lines.stream().filter((line) -> !ids.contains(line.get("id").asString())).toList());
	}

	Score score() {
		ReadQuantities tool = new ReadQuantities();
		List<Failure> failures = new ArrayList<>();
		for (JsonNode line : this.lines) {
			JsonNode answer = JSON.readTree(tool.answer(question(line)));
			if (!QuantityComparison.isRight(line.get("expected"), answer)) {
				failures.add(new Failure(line.get("id").asString(), line.get("text").asString(),
						line.get("expected").toString(), answer.toString()));
			}
		}
		return new Score(this.name, this.lines.size() - failures.size(), this.lines.size(), failures);
	}

	private static String question(JsonNode line) {
		return JSON.createObjectNode()
			.put("id", line.get("id").asString())
			.put("text", line.get("text").asString())
			.put("now", "2026-03-14T12:00")
			.toString();
	}

}

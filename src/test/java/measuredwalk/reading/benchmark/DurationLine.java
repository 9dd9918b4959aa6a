package measuredwalk.reading.benchmark;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * A line of the public set of durations.
 *
 * @param text the text
 * @param expected its durations
 * @param core whether they are in the range that owners need
 */
record DurationLine(String text, List<JsonNode> expected, boolean core) {

	private static final double TOLERANCE = 1e-4;

	static List<DurationLine> all() {
		try {
			return Files.readAllLines(Path.of("fixtures", "public", "language", "durations.given.jsonl"))
				.stream()
				.map(JsonMapper.shared()::readTree)
				.map((line) -> new DurationLine(line.get("text").asString(),
						line.get("expected").get("durations").valueStream().toList(),
						line.path("core").asBoolean(true)))
				.toList();
		}
		catch (IOException ex) {
			throw new UncheckedIOException(ex);
		}
	}

	/**
	 * Whether the seconds of a reader are those expected, in order; ranges are not asked
	 * of it.
	 */
	boolean isRight(List<Double> seconds) {
		if (seconds.size() != this.expected.size()) {
			return false;
		}
		for (int at = 0; at < seconds.size(); at++) {
			double wanted = this.expected.get(at).path("seconds").asDouble(seconds.get(at));
			if (Math.abs(seconds.get(at) - wanted) > TOLERANCE * wanted) {
				return false;
			}
		}
		return true;
	}

}

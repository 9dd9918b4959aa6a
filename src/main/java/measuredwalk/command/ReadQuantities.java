package measuredwalk.command;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.PrintStream;
import java.time.DateTimeException;
import java.time.LocalDateTime;
import java.util.List;

import measuredwalk.reading.Tokeniser;
import measuredwalk.reading.quantity.Quantities;
import measuredwalk.reading.quantity.Quantity;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/**
 * The tool {@code read quantities}: answers each line with all amounts, numbers and times
 * of its text. A text in which one sign may mean two things ('20m') is answered with
 * both, each in its own list.
 */
public final class ReadQuantities implements Tool {

	/**
	 * Times are answered as they were told, so the hour of a missing 'now' is no matter.
	 */
	private static final LocalDateTime ANY_TIME = LocalDateTime.of(2026, 1, 1, 12, 0);

	private final JsonMapper json = JsonMapper.builder().build();

	@Override
	public void run(BufferedReader input, PrintStream output) throws IOException {
		for (String line = input.readLine(); line != null; line = input.readLine()) {
			output.println(answer(line));
			output.flush();
		}
	}

	/**
	 * Answers one line.
	 * @param line a JSON object with {@code id}, {@code text} and {@code now}
	 * @return a JSON object with the quantities, or with an {@code error}
	 */
	public String answer(String line) {
		ObjectNode answer = this.json.createObjectNode();
		try {
			fill(answer, this.json.readTree(line));
		}
		catch (JacksonException ex) {
			answer.putNull("id");
			answer.put("error", "The line is not a JSON object: " + ex.getOriginalMessage());
		}
		return this.json.writeValueAsString(answer);
	}

	private void fill(ObjectNode answer, JsonNode question) {
		JsonNode id = question.get("id");
		answer.set("id", id == null ? this.json.nullNode() : id);
		JsonNode text = question.get("text");
		if (text == null || !text.isString()) {
			answer.put("error", "The field 'text' is missing or no string");
			return;
		}
		try {
			LocalDateTime now = now(question.get("now"));
			List<Quantity> readings = Quantities.readings(Tokeniser.tokens(text.stringValue()), now);
			new ReadQuantitiesAnswer(answer).add(readings);
		}
		catch (DateTimeException ex) {
			answer.put("error", "The field 'now' is no date and time such as 2026-03-14T18:30");
		}
	}

	private static LocalDateTime now(@org.jspecify.annotations.Nullable JsonNode now) {
		return now == null || now.isNull() ? ANY_TIME : LocalDateTime.parse(now.asString());
	}

}

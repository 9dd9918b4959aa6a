package measuredwalk.command;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.PrintStream;

import org.jspecify.annotations.Nullable;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** A tool that answers each line by itself; a bad line is answered by an error. */
abstract class LineTool implements Tool {

	static final JsonMapper JSON = JsonMapper.shared();

	@Override
	public void run(BufferedReader input, PrintStream output) throws IOException {
		for (String line = input.readLine(); line != null; line = input.readLine()) {
			if (!line.isBlank()) {
				output.println(answered(line));
				output.flush();
			}
		}
	}

	private String answered(String text) {
		JsonNode id = null;
		try {
			JsonNode line = JSON.readTree(text);
			id = line.get("id");
			return JSON.writeValueAsString(answer(line));
		}
		catch (JacksonException ex) {
			return error(id, "not valid JSON: " + ex.getOriginalMessage());
		}
		catch (IllegalArgumentException ex) {
			return error(id, String.valueOf(ex.getMessage()));
		}
	}

	/**
	 * Answers one line.
	 * @param line the line
	 * @return its answer
	 * @throws IllegalArgumentException when a field is missing or wrong; the message
	 * names it
	 */
	protected abstract ObjectNode answer(JsonNode line);

	static @Nullable JsonNode id(JsonNode line) {
		return line.get("id");
	}

	static String required(JsonNode line, String field) {
		JsonNode value = line.path(field);
		if (!value.isString()) {
			throw new IllegalArgumentException("the field '" + field + "' is missing or is no text");
		}
		return value.asString();
	}

	static int requiredNumber(JsonNode line, String field) {
		JsonNode value = line.path(field);
		if (!value.isInt()) {
			throw new IllegalArgumentException("the field '" + field + "' is missing or is no whole number");
		}
		return value.asInt();
	}

	private static String error(@Nullable JsonNode id, String what) {
		ObjectNode answer = JSON.createObjectNode();
		answer.set("id", id);
		answer.put("error", what);
		return JSON.writeValueAsString(answer);
	}

}

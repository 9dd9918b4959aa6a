package measuredwalk.command;

import measuredwalk.reading.MessageReader;
import measuredwalk.reading.context.Context;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/** Tells the context of a finding in a sentence: {@code read context}. */
final class ReadContext extends LineTool {

	private final MessageReader reader = MessageReader.standard();

	@Override
	protected ObjectNode answer(JsonNode line) {
		Context context = this.reader.context(required(line, "text"), requiredNumber(line, "start"),
				requiredNumber(line, "end"));
		ObjectNode answer = JSON.createObjectNode();
		answer.set("id", id(line));
		answer.put("negated", context.negated());
		answer.put("temporality", temporality(context));
		answer.put("experiencer", context.other() ? "other" : "patient");
		return answer;
	}

	private static String temporality(Context context) {
		if (context.historical()) {
			return "historical";
		}
		return context.hypothetical() ? "hypothetical" : "recent";
	}

}

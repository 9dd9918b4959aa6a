package measuredwalk.clinic.api;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

import tools.jackson.databind.JsonNode;

/**
 * Holds answers against the API's own OpenAPI document: types, required and allowed
 * values, and fields that it does not describe.
 */
final class ApiSchema {

	private final JsonNode document;

	ApiSchema(JsonNode document) {
		this.document = document;
	}

	/** The described operation, or a missing node. */
	JsonNode operation(String method, String path) {
		return this.document.path("paths").path(path).path(method.toLowerCase(java.util.Locale.ROOT));
	}

	/** What is wrong with an answer; empty when it is as described. */
	List<String> problems(String method, String path, int status, JsonNode body) {
		JsonNode response = operation(method, path).path("responses").path(String.valueOf(status));
		if (response.isMissingNode()) {
			response = operation(method, path).path("responses").path("default");
		}
		JsonNode content = response.path("content");
		List<String> problems = new ArrayList<>();
		if (content.isEmpty()) {
			problems.add(method + " " + path + " describes no content for " + status);
			return problems;
		}
		check(content.properties().iterator().next().getValue().path("schema"), body, "$", problems);
		return problems;
	}

	private void check(JsonNode schema, JsonNode value, String place, List<String> problems) {
		if (schema.has("$ref")) {
			check(this.document.at(schema.get("$ref").asString().substring(1)), value, place, problems);
			return;
		}
		if (value.isNull()) {
			return;
		}
		if (schema.has("enum") && !schema.get("enum").toString().contains(value.toString())) {
			problems.add(place + " is " + value + ", none of " + schema.get("enum"));
		}
		String type = schema.path("type").asString("");
		if (!type.isEmpty() && !isA(type, value)) {
			problems.add(place + " is " + value.getNodeType() + " and not " + type);
		}
		if (type.equals("array")) {
			value.forEach((each) -> check(schema.path("items"), each, place + "[]", problems));
		}
		if (type.equals("object")) {
			checkFields(schema, value, place, problems);
		}
	}

	private void checkFields(JsonNode schema, JsonNode value, String place, List<String> problems) {
		schema.path("required").forEach((name) -> {
			if (!value.has(name.asString())) {
				problems.add(place + " lacks " + name.asString());
			}
		});
		for (Map.Entry<String, JsonNode> field : value.properties()) {
			JsonNode described = schema.path("properties").path(field.getKey());
			if (described.isMissingNode()) {
				problems.add(place + "." + field.getKey() + " is not described");
			}
			else {
				check(described, field.getValue(), place + "." + field.getKey(), problems);
			}
		}
	}

	private static boolean isA(String type, JsonNode value) {
		return switch (type) {
			case "object" -> value.isObject();
			case "array" -> value.isArray();
			case "string" -> value.isString();
			case "integer" -> value.isIntegralNumber();
			case "number" -> value.isNumber();
			case "boolean" -> value.isBoolean();
			default -> false;
		};
	}

}

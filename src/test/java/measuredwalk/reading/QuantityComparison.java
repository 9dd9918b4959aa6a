package measuredwalk.reading;

import java.time.LocalTime;
import java.util.List;

import tools.jackson.databind.JsonNode;

/** Compares what the tool answered with what a public set expects. */
public final class QuantityComparison {

	private static final double TOLERANCE = 1e-4;

	private QuantityComparison() {
	}

	/**
	 * Whether the answer's list of the expected kind has just the expected entries.
	 * @param expected what the set expects, one list by its kind
	 * @param answer what the tool answered
	 * @return true when all are there, in order, and no other
	 */
	public static boolean isRight(JsonNode expected, JsonNode answer) {
		String kind = expected.propertyNames().iterator().next();
		List<JsonNode> wanted = expected.get(kind).valueStream().toList();
		List<JsonNode> got = entries(kind, wanted, answer);
		if (wanted.size() != got.size()) {
			return false;
		}
		for (int at = 0; at < wanted.size(); at++) {
			if (!isRight(kind, wanted.get(at), got.get(at))) {
				return false;
			}
		}
		return true;
	}

	/**
	 * What the tool answered of the kind that a set asks for.
	 * @param kind the name of the expected list
	 * @param wanted its entries
	 * @param answer what the tool answered
	 * @return the entries to compare
	 */
	public static List<JsonNode> entries(String kind, List<JsonNode> wanted, JsonNode answer) {
		if (!kind.equals("ranges")) {
			return answer.get(kind).valueStream().toList();
		}
		if (!wanted.isEmpty() && wanted.get(0).has("start")) {
			return answer.get("timeRanges").valueStream().toList();
		}
		return answer.get("numbers").valueStream().filter((number) -> number.has("low")).toList();
	}

	private static boolean isRight(String kind, JsonNode wanted, JsonNode got) {
		return switch (kind) {
			case "durations" -> isAmount(wanted, got, "seconds");
			case "distances" -> wanted.has("ambiguous_unit") || isAmount(wanted, got, "metres");
			case "numbers" -> isSame(wanted.get("value"), got.get("value"));
			case "temperatures" -> isAmount(wanted, got, "value") && wanted.get("unit").equals(got.get("unit"));
			case "times" -> isSameTime(wanted.get("time").asString(), got.get("time").asString());
			default -> wanted.has("start") ? isSameRange(wanted, got) : isAmount(wanted, got, "value");
		};
	}

	/** A value, or the two ends where the set tells ends and no single value. */
	private static boolean isAmount(JsonNode wanted, JsonNode got, String unit) {
		if (wanted.has(unit)) {
			return isSame(wanted.get(unit), got.get(unit));
		}
		String prefix = wanted.has("low") ? "" : unit + "_";
		return isSame(wanted.get(prefix + "low"), got.path("low"))
				&& isSame(wanted.get(prefix + "high"), got.path("high"));
	}

	private static boolean isSame(JsonNode wanted, JsonNode got) {
		if (!wanted.isNumber() || !got.isNumber()) {
			return wanted.isNull() && got.isNull();
		}
		double difference = Math.abs(wanted.asDouble() - got.asDouble());
		return difference <= TOLERANCE * Math.max(0.1, Math.abs(wanted.asDouble()));
	}

	/** Without am or pm in the text either half of the day is right. */
	private static boolean isSameTime(String wanted, String got) {
		LocalTime time = LocalTime.parse(wanted);
		return time.equals(LocalTime.parse(got)) || time.plusHours(12).equals(LocalTime.parse(got));
	}

	private static boolean isSameRange(JsonNode wanted, JsonNode got) {
		return wanted.get("start").equals(got.get("start")) && wanted.get("end").equals(got.get("end"))
				&& isSame(wanted.get("seconds"), got.get("seconds"));
	}

}

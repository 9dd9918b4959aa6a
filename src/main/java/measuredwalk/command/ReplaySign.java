package measuredwalk.command;

import measuredwalk.signs.Coded;
import measuredwalk.signs.Limb;
import measuredwalk.signs.Moment;
import measuredwalk.signs.Severity;
import measuredwalk.signs.Side;
import measuredwalk.signs.Sign;
import measuredwalk.signs.SignKind;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.JsonNode;

/** A sign as it stands in JSON. */
final class ReplaySign {

	private ReplaySign() {
	}

	static Sign read(JsonNode json) {
		JsonNode kind = json.path("sign");
		if (!kind.isString()) {
			throw new IllegalArgumentException("'sign' is required in each of 'signs' and must be text");
		}
		JsonNode onset = json.path("onsetMinute");
		boolean present = !json.path("present").isBoolean() || json.path("present").booleanValue();
		return new Sign(Coded.of(SignKind.class, kind.stringValue()), present, word(Severity.class, json, "severity"),
				word(Side.class, json, "side"), word(Limb.class, json, "limb"), word(Moment.class, json, "when"),
				onset.isNumber() ? Double.valueOf(onset.doubleValue()) : null);
	}

	private static <E extends Enum<E> & Coded> @Nullable E word(Class<E> vocabulary, JsonNode json, String field) {
		JsonNode node = json.path(field);
		return node.isString() ? Coded.of(vocabulary, node.stringValue()) : null;
	}

}

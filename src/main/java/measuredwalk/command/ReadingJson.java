package measuredwalk.command;

import java.time.format.DateTimeFormatter;

import measuredwalk.reading.Correction;
import measuredwalk.reading.LoadTold;
import measuredwalk.reading.Reading;
import measuredwalk.reading.RelativeAmount;
import measuredwalk.reading.WalkTold;
import measuredwalk.signs.Coded;
import measuredwalk.signs.Sign;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** Writes a reading as JSON. */
final class ReadingJson {

	private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm");

	private ReadingJson() {
	}

	static ObjectNode of(@Nullable JsonNode id, Reading reading) {
		ObjectNode json = LineTool.JSON.createObjectNode();
		json.set("id", id);
		ArrayNode walks = json.putArray("walks");
		reading.walks().forEach((walk) -> walks.add(walk(walk)));
		ArrayNode signs = json.putArray("signs");
		reading.signs().forEach((sign) -> signs.add(sign(sign)));
		json.put("stiffMinutes", reading.stiffMinutes());
		json.put("overall", code(reading.overall()));
		json.put("level", reading.level().code());
		reading.levelReasons().forEach(json.putArray("levelReasons")::add);
		json.put("understood", reading.understood());
		reading.unsure().forEach(json.putArray("unsure")::add);
		addRest(json, reading);
		return json;
	}

	private static void addRest(ObjectNode json, Reading reading) {
		if (reading.askBack() != null) {
			ObjectNode askBack = json.putObject("askBack").put("field", reading.askBack().field());
			reading.askBack().readings().forEach(askBack.putArray("readings")::add);
		}
		if (reading.correction() != null) {
			json.set("correction", correction(reading.correction()));
		}
		json.put("answer", code(reading.answer()));
		json.put("noWalk", reading.noWalk());
		ArrayNode loads = json.putArray("loads");
		reading.loads().forEach((load) -> loads.add(load(load)));
	}

	private static ObjectNode load(LoadTold load) {
		return LineTool.JSON.createObjectNode()
			.put("load", load.kind().code())
			.put("present", load.present())
			.put("walk", load.walk());
	}

	private static ObjectNode walk(WalkTold walk) {
		ObjectNode json = LineTool.JSON.createObjectNode();
		json.put("minutes", walk.minutes());
		json.put("minutesLow", walk.minutesLow());
		json.put("minutesHigh", walk.minutesHigh());
		json.put("distanceMetres", walk.distanceMetres());
		json.put("start", (walk.start() == null) ? null : walk.start().format(CLOCK));
		json.put("date", (walk.date() == null) ? null : walk.date().toString());
		RelativeAmount relative = walk.relative();
		if (relative == null) {
			json.putNull("relative");
		}
		else {
			json.putObject("relative")
				.put("of", relative.of().code())
				.put("factor", relative.factor())
				.put("offsetMinutes", relative.offsetMinutes());
		}
		return json;
	}

	private static ObjectNode sign(Sign sign) {
		return LineTool.JSON.createObjectNode()
			.put("sign", sign.kind().code())
			.put("present", sign.present())
			.put("severity", code(sign.severity()))
			.put("side", code(sign.side()))
			.put("limb", code(sign.limb()))
			.put("when", code(sign.when()))
			.put("onsetMinute", sign.onsetMinute());
	}

	private static ObjectNode correction(Correction correction) {
		return LineTool.JSON.createObjectNode()
			.put("minutes", correction.minutes())
			.put("wrongMinutes", correction.wrongMinutes())
			.put("distanceMetres", correction.distanceMetres())
			.put("side", code(correction.side()))
			.put("limb", code(correction.limb()));
	}

	private static @Nullable String code(@Nullable Enum<?> word) {
		return (word instanceof Coded coded) ? coded.code()
				: (word == null) ? null : word.name().toLowerCase(java.util.Locale.ROOT);
	}

}

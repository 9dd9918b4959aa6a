package measuredwalk.conversations;

import java.time.Duration;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import measuredwalk.reading.Question;
import measuredwalk.signs.Coded;

/** Reads a conversation from its file and complains of all that cannot be meant. */
final class ScriptReader {

	private static final Pattern PLACE = Pattern.compile("\\{([^}]*)}");

	private static final Set<String> KNOWN_PLACES = Set.of("dog");

	private ScriptReader() {
	}

	static Script script(YamlMap file) {
		String id = file.text("conversation");
		int version = number(file, "version");
		Question reads = word(file, "reads", Question.class, file.text("reads"));
		Duration closesAfter = duration(file, "closes-after");
		List<Step> steps = new ArrayList<>();
		Set<String> ids = new HashSet<>();
		for (YamlMap map : file.maps("steps")) {
			Step step = step(map);
			if (!ids.add(step.id())) {
				throw map.problemAt("step", "there are two steps '" + step.id() + "'; give each its own name.");
			}
			steps.add(step);
		}
		file.noOtherKeys();
		return new Script(id, version, reads, closesAfter, steps);
	}

	private static Step step(YamlMap map) {
		String id = map.text("step");
		Set<Slot> settles = EnumSet.noneOf(Slot.class);
		map.texts("settles").forEach((slot) -> settles.add(word(map, "settles", Slot.class, slot)));
		if (settles.isEmpty()) {
			throw map.problemAt("settles", "a step must settle something: name at least one of its slots.");
		}
		Circumstance onlyIf = map.optionalText("only-if")
			.map((circumstance) -> word(map, "only-if", Circumstance.class, circumstance))
			.orElse(null);
		Step step = new Step(id, settles, onlyIf, sentence(map, "ask"), sentence(map, "ask-again"),
				map.texts("choices"));
		map.noOtherKeys();
		return step;
	}

	private static String sentence(YamlMap map, String key) {
		String text = map.text(key);
		Matcher places = PLACE.matcher(text);
		while (places.find()) {
			if (!KNOWN_PLACES.contains(places.group(1))) {
				throw map.problemAt(key, "'{" + places.group(1) + "}' is not known here; known is {dog}.");
			}
		}
		return text;
	}

	private static int number(YamlMap map, String key) {
		try {
			return Integer.parseInt(map.text(key));
		}
		catch (NumberFormatException ex) {
			throw map.problemAt(key, "'" + key + "' must be a whole number.");
		}
	}

	private static Duration duration(YamlMap map, String key) {
		try {
			return Duration.parse("PT" + map.text(key).replace(" ", "").toUpperCase(java.util.Locale.ROOT));
		}
		catch (DateTimeParseException ex) {
			throw map.problemAt(key, "'" + key + "' must be a length of time such as '6h' or '1h 30m'.");
		}
	}

	private static <E extends Enum<E> & Coded> E word(YamlMap map, String key, Class<E> vocabulary, String code) {
		try {
			return Coded.of(vocabulary, code);
		}
		catch (IllegalArgumentException ex) {
			throw map.problemAt(key, ex.getMessage() + ".");
		}
	}

}

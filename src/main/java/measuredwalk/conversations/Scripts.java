package measuredwalk.conversations;

import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** All conversations. */
final class Scripts {

	private final InEachLanguage<Map<String, Script>> byId;

	private Scripts(InEachLanguage<Map<String, Script>> byId) {
		this.byId = byId;
	}

	static Scripts read(ConversationFiles files) {
		Map<String, Script> usual = all(files);
		return new Scripts(InEachLanguage.read(files, (own) -> same(own, all(own), usual)));
	}

	private static Map<String, Script> all(ConversationFiles files) {
		return Stream.of(CheckIns.WELCOME, CheckIns.AFTER_WALK, CheckIns.NEXT_MORNING, CheckIns.WEEKLY)
			.map((id) -> read(files, id))
			.collect(Collectors.toUnmodifiableMap(Script::id, Function.identity()));
	}

	/** A running conversation may change its language, so the steps must be the same. */
	private static Map<String, Script> same(ConversationFiles files, Map<String, Script> own,
			Map<String, Script> usual) {
		usual.forEach((id, script) -> {
			if (!script.hasStepsOf(own.get(id))) {
				throw new ConversationFileProblem(files.name(id + ".yaml")
						+ " must have the same steps, in the same order, with the same 'settles' and as many choices, as"
						+ " the usual language's file; only words may differ.");
			}
		});
		return own;
	}

	private static Script read(ConversationFiles files, String id) {
		YamlMap file = files.file(id + ".yaml");
		Script script = ScriptReader.script(file);
		if (!script.id().equals(id)) {
			throw file.problemAt("conversation",
					"the conversation in this file must be named '" + id + "', as the file is.");
		}
		return script;
	}

	Script get(String id) {
		return Optional.ofNullable(this.byId.now().get(id))
			.orElseThrow(() -> new IllegalArgumentException("There is no conversation '" + id + "'."));
	}

}

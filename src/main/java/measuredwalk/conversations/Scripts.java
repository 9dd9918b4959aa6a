package measuredwalk.conversations;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/** All conversations. */
final class Scripts {

	private final Map<String, Script> byId;

	private Scripts(List<Script> scripts) {
		this.byId = scripts.stream().collect(Collectors.toUnmodifiableMap(Script::id, Function.identity()));
	}

	static Scripts read(ConversationFiles files) {
		return new Scripts(List.of(read(files, CheckIns.WELCOME), read(files, CheckIns.AFTER_WALK),
				read(files, CheckIns.NEXT_MORNING), read(files, CheckIns.WEEKLY)));
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
		return Optional.ofNullable(this.byId.get(id))
			.orElseThrow(() -> new IllegalArgumentException("There is no conversation '" + id + "'."));
	}

}

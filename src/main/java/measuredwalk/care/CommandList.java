package measuredwalk.care;

import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.BiConsumer;

import measuredwalk.conversations.CheckIns;
import measuredwalk.conversations.Phrase;
import measuredwalk.household.Households;
import org.springframework.stereotype.Component;

/** All commands, and what each one does. */
@Component
class CommandList {

	static final String START = "/start";

	static final String HELP = "/help";

	static final String LANGUAGE = "/language";

	private final Map<String, Command> commands;

	CommandList(Households households, CheckIns checkIns, CheckInTalk talk, TodayTalk today, LogTalk log,
			LookingTalk looking, TakingBack takingBack, HoursTalk hours, SpeechTalk speech, ExportTalk export,
			Erasing erasing, Leaving leaving) {
		this.commands = Map.ofEntries(
				entry("/walk", Scope.ONE_DOG, (turn, reply) -> talk.begin(turn, CheckIns.AFTER_WALK, reply)),
				entry("/morning", Scope.ONE_DOG, (turn, reply) -> talk.begin(turn, CheckIns.NEXT_MORNING, reply)),
				entry("/today", Scope.EACH_DOG, today::today), entry("/why", Scope.EACH_DOG, today::why),
				Map.entry("/log", new Command(Scope.EACH_DOG, log::command)),
				Map.entry("/signs", new Command(Scope.THE_CHAT, looking::command)),
				entry("/undo", Scope.THE_CHAT, takingBack::undo),
				entry("/share", Scope.THE_HOME, (turn, reply) -> share(households, turn, reply)),
				Map.entry("/hours", new Command(Scope.THE_HOME, hours::command)),
				Map.entry(LANGUAGE, new Command(Scope.THE_HOME, speech::command)),
				Map.entry("/export", new Command(Scope.EACH_DOG, export::command)),
				entry("/erase", Scope.ONE_DOG, erasing::ask), entry("/leave", Scope.THE_HOME, leaving::command),
				entry("/stop", Scope.THE_CHAT, (turn, reply) -> stop(households, checkIns, turn, reply)));
	}

	/** What a command is about. */
	enum Scope {

		/** Something is shown of each dog, or of those named. */
		EACH_DOG,
		/** It is about one dog. */
		ONE_DOG,
		/** It is about a household with all its dogs. */
		THE_HOME,
		/** It is about the chat, whatever dogs it has. */
		THE_CHAT

	}

	/** What a command does with what stands behind it. */
	@FunctionalInterface
	interface Deed {

		void run(Turn turn, String wish, Reply reply);

	}

	record Command(Scope scope, Deed deed) {

		void run(Turn turn, String wish, Reply reply) {
			this.deed.run(turn, wish, reply);
		}

	}

	private static Map.Entry<String, Command> entry(String name, Scope scope, BiConsumer<Turn, Reply> deed) {
		return Map.entry(name, new Command(scope, (turn, wish, reply) -> deed.accept(turn, reply)));
	}

	Optional<Command> named(String name) {
		return Optional.ofNullable(this.commands.get(name));
	}

	/** The names of all commands, with the stroke. */
	Set<String> names() {
		Set<String> names = new TreeSet<>(this.commands.keySet());
		names.addAll(Set.of(START, HELP));
		return names;
	}

	private static void share(Households households, Turn turn, Reply reply) {
		String code = households.shareCode(turn.carer().householdId(), turn.carer().name());
		reply.say(Phrase.SHARE, Map.of("dog", reply.and(turn.homeNames()), "code", code));
	}

	private static void stop(Households households, CheckIns checkIns, Turn turn, Reply reply) {
		checkIns.close(turn.chatId());
		households.silence(turn.chatId());
		reply.say(Phrase.STOPPED, Map.of("dog", reply.and(turn.homeNames())));
	}

}

package measuredwalk.care;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

import measuredwalk.conversations.Phrase;
import measuredwalk.messaging.IncomingMessage;
import org.springframework.stereotype.Component;

/**
 * Takes the words that begin with a stroke. With several dogs a name may stand behind;
 * without one, what is only shown is shown of each, and otherwise it is asked.
 */
@Component
class Commands {

	private final CommandList commands;

	private final Joining joining;

	private final Turns turns;

	private final WhichDog which;

	private final SpeechTalk speech;

	Commands(CommandList commands, Joining joining, Turns turns, WhichDog which, SpeechTalk speech) {
		this.speech = speech;
		this.commands = commands;
		this.joining = joining;
		this.turns = turns;
		this.which = which;
	}

	void run(IncomingMessage message, Reply reply) {
		String name = name(message.text());
		List<Turn> dogs = this.turns.of(message);
		if (name.equals(CommandList.START)) {
			this.joining.start(message, rest(message.text()), dogs, reply);
		}
		else if (name.equals(CommandList.HELP)) {
			reply.say(Phrase.HELP);
		}
		else if (dogs.isEmpty()) {
			newcomer(name, message, reply);
		}
		else {
			this.commands.named(name)
				.ifPresentOrElse((command) -> run(command, dogs, reply), () -> reply.say(Phrase.UNKNOWN_COMMAND));
		}
	}

	private void newcomer(String name, IncomingMessage message, Reply reply) {
		boolean chosen = name.equals(CommandList.LANGUAGE)
				&& this.speech.chosenByNewcomer(message.chatId(), rest(message.text()), reply);
		if (!chosen) {
			reply.say(Phrase.HOW_TO_BEGIN);
		}
	}

	/** Runs the command of a message whose dog is known. */
	void runFor(Turn turn, Reply reply) {
		this.commands.named(name(turn.text())).ifPresent((command) -> command.run(turn, wish(turn), reply));
	}

	private void run(CommandList.Command command, List<Turn> dogs, Reply reply) {
		List<Turn> named = named(dogs);
		List<Turn> about = switch (command.scope()) {
			case EACH_DOG -> named.isEmpty() ? dogs : named;
			case THE_CHAT -> dogs.subList(0, 1);
			case THE_HOME -> oneHome(dogs) ? dogs.subList(0, 1) : named;
			case ONE_DOG -> (dogs.size() == 1) ? dogs : named;
		};
		boolean clear = command.scope() == CommandList.Scope.EACH_DOG || about.size() == 1;
		if (clear) {
			about.forEach((turn) -> command.run(turn, wish(turn), reply));
		}
		else {
			this.which.ask(dogs, false, reply);
		}
	}

	private static List<Turn> named(List<Turn> dogs) {
		String rest = rest(dogs.get(0).text());
		return new DogNames(Turns.names(dogs)).in(rest)
			.stream()
			.flatMap((mention) -> mention.dogs().stream())
			.distinct()
			.sorted()
			.map(dogs::get)
			.toList();
	}

	private static boolean oneHome(List<Turn> dogs) {
		return dogs.stream().map((turn) -> turn.dog().household().id()).distinct().count() == 1;
	}

	/** What stands behind a command, unless it only names a dog. */
	private static String wish(Turn turn) {
		String rest = rest(turn.text());
		return new DogNames(List.of(turn.dog().name())).only(rest).isEmpty() ? rest : "";
	}

	private static String name(String text) {
		return text.strip().split("\\s+", 2)[0].toLowerCase(Locale.ROOT).split("@", 2)[0];
	}

	private static String rest(String text) {
		String[] parts = text.strip().split("\\s+", 2);
		return Optional.of(parts).filter((each) -> each.length > 1).map((each) -> each[1].strip()).orElse("");
	}

}

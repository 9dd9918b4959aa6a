package measuredwalk.telegram;

import java.util.Locale;

import org.telegram.telegrambots.meta.api.objects.message.Message;

/**
 * In a group people talk to each other: the bot listens only to its commands, to answers
 * to its own messages, and to words that name it.
 */
final class GroupTalk {

	private GroupTalk() {
	}

	static boolean toUs(Message message, String text, BotIdentity us) {
		String words = text.strip();
		if (words.startsWith("/")) {
			return command(words.split("\\s", 2)[0], us);
		}
		return repliesToUs(message, us) || names(words, us);
	}

	private static boolean command(String command, BotIdentity us) {
		int at = command.indexOf('@');
		return at < 0 || us.username().isEmpty() || command.substring(at + 1).equalsIgnoreCase(us.username());
	}

	private static boolean repliesToUs(Message message, BotIdentity us) {
		Message before = message.getReplyToMessage();
		return before != null && before.getFrom() != null && before.getFrom().getId() == us.id();
	}

	private static boolean names(String words, BotIdentity us) {
		return !us.username().isEmpty() && words.toLowerCase(Locale.ROOT).contains(at(us));
	}

	/** The words without the bot's name, which is no part of what is told. */
	static String withoutName(String text, BotIdentity us) {
		if (us.username().isEmpty() || text.startsWith("/")) {
			return text;
		}
		int start = text.toLowerCase(Locale.ROOT).indexOf(at(us));
		return (start < 0) ? text : (text.substring(0, start) + text.substring(start + at(us).length())).strip();
	}

	private static String at(BotIdentity us) {
		return "@" + us.username().toLowerCase(Locale.ROOT);
	}

}

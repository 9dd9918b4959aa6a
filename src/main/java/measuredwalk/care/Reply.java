package measuredwalk.care;

import java.util.List;
import java.util.Map;

import measuredwalk.conversations.Phrase;
import measuredwalk.conversations.Prompt;
import measuredwalk.conversations.Replies;
import measuredwalk.messaging.MessagePicture;
import measuredwalk.messaging.Outbox;
import measuredwalk.messaging.OutgoingMessage;

/**
 * The messages that one cause sends to one chat, in order, each under a key of its own.
 */
final class Reply {

	private final Outbox outbox;

	private final Replies replies;

	private final long chatId;

	private final String cause;

	private int number;

	private boolean questionsHeld;

	Reply(Outbox outbox, Replies replies, long chatId, String cause) {
		this.outbox = outbox;
		this.replies = replies;
		this.chatId = chatId;
		this.cause = cause;
	}

	/** Names in a row, as they are said: 'Moss and Tarn'. */
	String and(List<String> names) {
		return new Figures(this.replies).and(names);
	}

	void say(Phrase phrase, Map<String, ?> places) {
		say(this.replies.say(phrase, places));
	}

	void say(Phrase phrase) {
		say(phrase, Map.of());
	}

	void say(String text) {
		write(OutgoingMessage.of(text));
	}

	/** Says something with a picture beside it. */
	void show(String text, MessagePicture picture) {
		write(OutgoingMessage.of(text).with(picture));
	}

	/** Says something that stands ready. */
	void say(OutgoingMessage message) {
		write(message);
	}

	/** From now on the check-in's own questions wait: one question at a time. */
	void holdQuestions() {
		this.questionsHeld = true;
	}

	void ask(Prompt prompt) {
		if (this.questionsHeld) {
			return;
		}
		write(new OutgoingMessage(prompt.text(), prompt.choices()));
	}

	void ask(Phrase phrase, Map<String, ?> places, List<String> choices) {
		write(new OutgoingMessage(this.replies.say(phrase, places), choices));
	}

	void ask(String question, List<String> choices) {
		write(new OutgoingMessage(question, choices));
	}

	private void write(OutgoingMessage message) {
		this.number++;
		this.outbox.write(this.chatId, this.cause + "/" + this.chatId + "/" + this.number, message);
	}

}

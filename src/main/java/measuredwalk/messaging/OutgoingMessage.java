package measuredwalk.messaging;

import java.util.List;

import org.jspecify.annotations.Nullable;

/**
 * A message to be sent.
 *
 * @param text what it says, plain text
 * @param choices answers to offer on buttons; words always work as well
 * @param picture what is shown beside the text on a channel that can, or null
 * @param document a file that goes with it, or null; never together with a picture
 */
public record OutgoingMessage(String text, List<String> choices, @Nullable MessagePicture picture,
		@Nullable MessageDocument document) {

	public OutgoingMessage {
		choices = List.copyOf(choices);
	}

	/**
	 * A message without a picture.
	 * @param text what it says
	 * @param choices answers to offer
	 */
	public OutgoingMessage(String text, List<String> choices) {
		this(text, choices, null, null);
	}

	/**
	 * A message without choices.
	 * @param text what it says
	 * @return the message
	 */
	public static OutgoingMessage of(String text) {
		return new OutgoingMessage(text, List.of());
	}

	/**
	 * The same message with other words.
	 * @param words what it says
	 * @return the message
	 */
	public OutgoingMessage saying(String words) {
		return new OutgoingMessage(words, this.choices, this.picture, this.document);
	}

	/**
	 * The same message with a picture beside it.
	 * @param shown the picture
	 * @return the message
	 */
	public OutgoingMessage with(MessagePicture shown) {
		return new OutgoingMessage(this.text, this.choices, shown, null);
	}

	/**
	 * The same message with a file.
	 * @param handed the file
	 * @return the message
	 */
	public OutgoingMessage with(MessageDocument handed) {
		return new OutgoingMessage(this.text, this.choices, null, handed);
	}

}

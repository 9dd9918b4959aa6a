package measuredwalk.messaging;

import java.util.List;

/**
 * A message to be sent.
 *
 * @param text what it says, plain text
 * @param choices answers to offer on buttons; words always work as well
 */
public record OutgoingMessage(String text, List<String> choices) {

	public OutgoingMessage {
		choices = List.copyOf(choices);
	}

	/**
	 * A message without choices.
	 * @param text what it says
	 * @return the message
	 */
	public static OutgoingMessage of(String text) {
		return new OutgoingMessage(text, List.of());
	}

}

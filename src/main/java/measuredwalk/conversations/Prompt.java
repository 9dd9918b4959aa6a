package measuredwalk.conversations;

import java.util.List;

/**
 * A question to be sent.
 *
 * @param text the question
 * @param choices answers to offer; words always work as well
 */
public record Prompt(String text, List<String> choices) {

	public Prompt {
		choices = List.copyOf(choices);
	}

}

package measuredwalk.messaging;

/**
 * Tells a channel where an answer is waited for: in a group, other words are not for us.
 */
public interface OpenQuestions {

	/**
	 * Whether a question waits in a chat.
	 * @param chatId the chat
	 * @return true when what is said there is its answer
	 */
	boolean waitsIn(long chatId);

}

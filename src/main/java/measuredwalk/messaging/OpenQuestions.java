package measuredwalk.messaging;

/**
 * Tells a channel where an answer is waited for: in a group, other words are not for us.
 */
public interface OpenQuestions {

	/**
	 * Whether a question waits in a chat that words may answer.
	 * @param chatId the chat
	 * @param text the words
	 * @return true when they may be its answer; false when nothing waits there, or when
	 * they are people's talk among themselves
	 */
	boolean answeredBy(long chatId, String text);

}

package measuredwalk.escalation;

import java.util.Optional;

/** Takes what is written in staff chats. */
public interface StaffReplies {

	/**
	 * Takes a message, when it comes from a staff chat.
	 * @param chatId the chat
	 * @param sender who wrote
	 * @param text what it says
	 * @return the answer, which may be without words, or empty when this is not for staff
	 */
	Optional<String> answer(long chatId, String sender, String text);

}

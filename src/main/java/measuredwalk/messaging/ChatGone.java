package measuredwalk.messaging;

/**
 * Nothing can be sent to a chat any more.
 *
 * @param chatId the chat
 */
public record ChatGone(long chatId) {
}

package measuredwalk.messaging;

import java.time.Instant;

/**
 * A message that came in and is stored.
 *
 * @param id its number in the inbox
 * @param chatId the chat that it came from
 * @param senderName what the channel calls the person
 * @param text what it says
 * @param receivedAt when it came in
 */
public record IncomingMessage(long id, long chatId, String senderName, String text, Instant receivedAt) {
}

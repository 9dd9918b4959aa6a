package measuredwalk.messaging;

import java.time.Instant;

import org.jspecify.annotations.Nullable;

/**
 * A message in the outbox.
 *
 * @param id its number in the outbox
 * @param chatId the chat that it goes to
 * @param message what it says
 * @param writtenAt when it was written
 * @param sentAt when its channel took it, or null
 */
public record OutboxEntry(long id, long chatId, OutgoingMessage message, Instant writtenAt, @Nullable Instant sentAt) {
}

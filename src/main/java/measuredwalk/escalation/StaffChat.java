package measuredwalk.escalation;

import java.time.Instant;

/**
 * A chat that gets the clinic's alerts.
 *
 * @param chatId its number
 * @param channel the channel that it is on
 * @param joinedAt since when it gets them
 */
public record StaffChat(long chatId, String channel, Instant joinedAt) {
}

package measuredwalk.journal;

import java.time.Instant;
import java.util.UUID;

import org.jspecify.annotations.Nullable;

/**
 * A picture, film or file that was sent of a dog. It is kept for the clinic, not looked
 * at.
 *
 * @param entryId the walk or morning that it was sent with, or null
 * @param kind what it is
 * @param reference the channel's own name by which it can be fetched, 1 to 400 characters
 * @param by who sent it
 * @param at when
 */
public record Attached(@Nullable UUID entryId, AttachmentKind kind, String reference, String by, Instant at) {
}

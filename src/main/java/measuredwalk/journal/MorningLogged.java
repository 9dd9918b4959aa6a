package measuredwalk.journal;

import java.util.UUID;

/**
 * A morning was written down, changed or taken back.
 *
 * @param dogId the dog
 * @param entryId the entry
 */
public record MorningLogged(UUID dogId, UUID entryId) {
}

package measuredwalk.journal;

import java.util.UUID;

/**
 * A walk was written down, changed or taken back.
 *
 * @param dogId the dog
 * @param entryId the entry
 */
public record WalkLogged(UUID dogId, UUID entryId) {
}

package measuredwalk.journal;

import java.time.Instant;
import java.util.List;
import java.util.UUID;

import org.jspecify.annotations.Nullable;

/**
 * A walk in the journal, or a version of it that does not count any more.
 *
 * @param id the entry's number, the same for all its versions
 * @param version 1 for the first version
 * @param standing whether this version counts
 * @param dogId the dog
 * @param facts what is known of the walk
 * @param said the words that it was read from, oldest first
 * @param reportedBy who told of it first
 * @param reportedAt when it was told first
 * @param writtenAt when this version was written
 * @param endedBy who replaced or took back this version, or null while it counts
 * @param endedAt when that was, or null
 */
public record WalkEntry(UUID id, int version, Standing standing, UUID dogId, WalkFacts facts, List<Said> said,
		Teller reportedBy, Instant reportedAt, Instant writtenAt, @Nullable String endedBy, @Nullable Instant endedAt) {

	public WalkEntry {
		said = List.copyOf(said);
	}

}

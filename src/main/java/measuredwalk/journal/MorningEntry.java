package measuredwalk.journal;

import java.time.Instant;
import java.util.List;
import java.util.UUID;

import org.jspecify.annotations.Nullable;

/**
 * A morning in the journal, or a version of it that does not count any more.
 *
 * @param id the entry's number, the same for all its versions
 * @param version 1 for the first version
 * @param standing whether this version counts
 * @param dogId the dog
 * @param facts what is known of the morning
 * @param said the words that it was read from, oldest first
 * @param reportedBy who told of it first
 * @param reportedAt when it was told first
 * @param writtenAt when this version was written
 * @param endedBy who replaced or took back this version, or null while it counts
 * @param endedAt when that was, or null
 */
public record MorningEntry(UUID id, int version, Standing standing, UUID dogId, MorningFacts facts, List<Said> said,
		Teller reportedBy, Instant reportedAt, Instant writtenAt, @Nullable String endedBy, @Nullable Instant endedAt) {

	public MorningEntry {
		said = List.copyOf(said);
	}

}

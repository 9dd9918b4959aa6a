package measuredwalk.journal;

import java.util.Optional;

import org.jspecify.annotations.Nullable;

/**
 * An entry of either kind: a walk or a morning, one of them null.
 *
 * @param walk the walk, or null
 * @param morning the morning, or null
 */
public record JournalEntry(@Nullable WalkEntry walk, @Nullable MorningEntry morning) {

	static JournalEntry of(WalkEntry walk) {
		return new JournalEntry(walk, null);
	}

	static JournalEntry of(MorningEntry morning) {
		return new JournalEntry(null, morning);
	}

	/**
	 * The walk, when it is one.
	 * @return the walk, or empty
	 */
	public Optional<WalkEntry> asWalk() {
		return Optional.ofNullable(this.walk);
	}

	/**
	 * The morning, when it is one.
	 * @return the morning, or empty
	 */
	public Optional<MorningEntry> asMorning() {
		return Optional.ofNullable(this.morning);
	}

}

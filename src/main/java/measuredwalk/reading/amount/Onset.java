package measuredwalk.reading.amount;

/**
 * When something was first seen on a walk.
 *
 * @param word index of the word that told so
 * @param minute minutes from the start of the walk, or null when only {@code fromEnd} is
 * known
 * @param fromEnd minutes before the end of the walk, or null
 */
public record Onset(int word, @org.jspecify.annotations.Nullable Double minute,
		@org.jspecify.annotations.Nullable Double fromEnd) {
}

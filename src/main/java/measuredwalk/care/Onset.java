package measuredwalk.care;

import measuredwalk.signs.Moment;
import org.jspecify.annotations.Nullable;

/**
 * When in a walk a sign began.
 *
 * @param minute minutes from the start of the walk, or null
 * @param when the part of the walk, or null
 */
record Onset(@Nullable Double minute, @Nullable Moment when) {
}

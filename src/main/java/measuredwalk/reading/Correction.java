package measuredwalk.reading;

import measuredwalk.signs.Limb;
import measuredwalk.signs.Side;
import org.jspecify.annotations.Nullable;

/**
 * A change to something told before: 'no, 15 not 50', 'sorry, meant left'. It changes
 * what it names and leaves the rest. What is not corrected is null.
 *
 * @param minutes the right minutes
 * @param wrongMinutes the minutes that were wrong, when they were named
 * @param distanceMetres the right distance, in metres
 * @param side the right side
 * @param limb the right leg
 */
public record Correction(@Nullable Double minutes, @Nullable Double wrongMinutes, @Nullable Double distanceMetres,
		@Nullable Side side, @Nullable Limb limb) {
}

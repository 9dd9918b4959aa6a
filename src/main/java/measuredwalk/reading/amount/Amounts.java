package measuredwalk.reading.amount;

import java.util.List;

import measuredwalk.reading.WalkTold;
import org.jspecify.annotations.Nullable;

/**
 * What the numbers of a message told.
 *
 * @param walks the walks
 * @param onsets when signs began
 * @param stiffMinutes how long stiffness took to ease, in minutes, or null
 * @param noWalk true when it is said that there was no walk
 * @param wrongMinutes minutes that were said to be wrong, or null
 * @param nightWords indexes of words that tell an hour of the night
 * @param walkWords for each walk the index of a word that tells of it, -1 where none does
 */
public record Amounts(List<WalkTold> walks, List<Onset> onsets, @Nullable Double stiffMinutes, boolean noWalk,
		@Nullable Double wrongMinutes, List<Integer> nightWords, List<Integer> walkWords) {
}

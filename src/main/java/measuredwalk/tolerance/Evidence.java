package measuredwalk.tolerance;

import java.time.LocalDate;
import java.util.List;

/**
 * Facts counted from the journal that a suggestion rests on. Only walks and mornings that
 * were told count; what was not told is counted as not told.
 *
 * @param from first day counted
 * @param to last day counted
 * @param walks walks by length, the shortest first; none for a band without walks
 * @param mornings the mornings
 * @param nearTheLimit walks whose length was at least 80 percent of today's median
 * tolerance: walks far below it say next to nothing
 */
public record Evidence(LocalDate from, LocalDate to, List<WalksOfLength> walks, Mornings mornings, int nearTheLimit) {

	public Evidence {
		walks = List.copyOf(walks);
	}

	/**
	 * Walks of similar length, as in 'on 3 of 4 walks over 20 minutes'.
	 *
	 * @param overMinutes all were longer than this, 0 for the shortest
	 * @param atMostMinutes none was longer than this
	 * @param walks how many were told
	 * @param withSigns on how many a sign was seen
	 */
	public record WalksOfLength(double overMinutes, double atMostMinutes, int walks, int withSigns) {
	}

	/**
	 * Mornings.
	 *
	 * @param told how many were told
	 * @param worse how many were worse than the dog's own usual
	 * @param bad how many of these by two grades or more
	 */
	public record Mornings(int told, int worse, int bad) {
	}

}

package measuredwalk.tolerance;

import java.util.ArrayList;
import java.util.List;

import org.jspecify.annotations.Nullable;

/**
 * What a journal came to by the morning of its last day, for the dogs asked about last: a
 * year's journal costs as much as 365 days to go through, and mostly only the last of
 * them is new. A state is used again only for a journal that begins with exactly the
 * events that it was made of, so that a correction, an undo or a late answer is gone
 * through anew. For use by several threads.
 */
final class RememberedMornings {

	/** The one asked about last comes last. */
	private final List<Remembered> kept = new ArrayList<>();

	private final int dogs;

	/**
	 * Room for some dogs.
	 * @param dogs how many, 0 to remember nothing. A year of one takes about a quarter of
	 * a megabyte
	 */
	RememberedMornings(int dogs) {
		this.dogs = dogs;
	}

	/**
	 * A journal gone through.
	 *
	 * @param told the events of all days before the morning
	 * @param morning what they came to
	 */
	record Remembered(List<ToleranceEvent> told, ToleranceCourse.MorningState morning) {

		Remembered {
			told = List.copyOf(told);
		}

		/**
		 * Whether a history begins with these events and goes on no earlier than on the
		 * morning. It is held against it from the end: two dogs mostly differ in what was
		 * told of them last.
		 */
		boolean isBeginningOf(List<ToleranceEvent> history) {
			if (history.size() <= this.told.size()
					|| history.get(this.told.size()).date().isBefore(this.morning.date())) {
				return false;
			}
			for (int i = this.told.size() - 1; i >= 0; i--) {
				if (!this.told.get(i).equals(history.get(i))) {
					return false;
				}
			}
			return true;
		}

	}

	/**
	 * The longest part of a history that is remembered.
	 * @param history the history
	 * @return its beginning, or null
	 */
	synchronized @Nullable Remembered beginningOf(List<ToleranceEvent> history) {
		Remembered longest = null;
		for (Remembered one : this.kept) {
			if ((longest == null || one.told().size() > longest.told().size()) && one.isBeginningOf(history)) {
				longest = one;
			}
		}
		if (longest != null) {
			this.kept.remove(longest);
			this.kept.add(longest);
		}
		return longest;
	}

	/**
	 * Remembers one.
	 * @param one what to remember
	 * @param instead what it grew from and makes needless, or null
	 */
	synchronized void keep(Remembered one, @Nullable Remembered instead) {
		this.kept.removeIf((other) -> other == instead);
		this.kept.add(one);
		while (this.kept.size() > this.dogs) {
			this.kept.remove(0);
		}
	}

}

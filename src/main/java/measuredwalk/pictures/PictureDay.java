package measuredwalk.pictures;

import java.time.LocalDate;
import java.util.List;

import org.jspecify.annotations.Nullable;

/**
 * A day to be shown.
 *
 * @param date the day
 * @param suggested what was suggested that morning, or null when nothing was
 * @param walks the walks that were told of with their minutes
 * @param morning how the morning was
 * @param changes what was changed that day
 */
public record PictureDay(LocalDate date, @Nullable Suggested suggested, List<Walk> walks, Morning morning,
		List<Change> changes) {

	public PictureDay {
		walks = List.copyOf(walks);
		changes = List.copyOf(changes);
	}

	/**
	 * What was suggested, and the belief that it rests on.
	 *
	 * @param walks number of walks
	 * @param minutes minutes for each
	 * @param toleranceLow low end of the 80 percent interval of the tolerance, in minutes
	 * @param toleranceMedian its median, in minutes
	 * @param toleranceHigh high end of that interval, in minutes
	 */
	public record Suggested(int walks, double minutes, double toleranceLow, double toleranceMedian,
			double toleranceHigh) {
	}

	/**
	 * A walk.
	 *
	 * @param minutes how long it was, in minutes
	 * @param signs the signs seen on it, in words; empty when none was
	 */
	public record Walk(double minutes, String signs) {

		boolean withSigns() {
			return !this.signs.isEmpty();
		}
	}

	/** How a morning was. */
	public enum Morning {

		/** Nothing was told of it. */
		NOT_TOLD,
		/** No signs, and not worse than usual. */
		CLEAR,
		/** Some signs, but none that is clear. */
		SOME_SIGNS,
		/** Worse than usual, clear signs or long stiffness. */
		WORSE

	}

	/** What kind of change it was. */
	public enum ChangeKind {

		/** Another plan. */
		PLAN,
		/** A medicine started or stopped. */
		MEDICINE

	}

	/**
	 * A change.
	 *
	 * @param kind what was changed
	 * @param words the change in words
	 */
	public record Change(ChangeKind kind, String words) {
	}

	double walkedMinutes() {
		return this.walks.stream().mapToDouble(Walk::minutes).sum();
	}

	double suggestedMinutes() {
		return (this.suggested != null) ? this.suggested.walks() * this.suggested.minutes() : 0;
	}

	double longestWalk() {
		return this.walks.stream().mapToDouble(Walk::minutes).max().orElse(0);
	}

	boolean withSigns() {
		return this.walks.stream().anyMatch(Walk::withSigns);
	}

	boolean told() {
		return !this.walks.isEmpty() || this.morning != Morning.NOT_TOLD;
	}

}

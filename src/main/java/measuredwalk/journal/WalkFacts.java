package measuredwalk.journal;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

import measuredwalk.signs.LoadKind;
import measuredwalk.signs.Overall;
import measuredwalk.signs.Sign;
import org.jspecify.annotations.Nullable;

/**
 * What is known of a walk. What was not said is null.
 *
 * @param date the day of the walk, in the household's zone
 * @param start when it began
 * @param minutes how long it was, in minutes
 * @param minutesLow the least it was, in minutes
 * @param minutesHigh the most it was, in minutes
 * @param distanceMetres how far, in metres
 * @param minutesEstimated true when the minutes were worked out from the distance or from
 * another walk
 * @param overall how the dog was after it, against its own usual
 * @param signs signs seen and signs denied
 * @param unsure paths of fields that nobody is sure of
 * @param loads what made it harder than the dog's usual walk
 */
public record WalkFacts(LocalDate date, @Nullable LocalTime start, @Nullable Double minutes,
		@Nullable Double minutesLow, @Nullable Double minutesHigh, @Nullable Double distanceMetres,
		boolean minutesEstimated, @Nullable Overall overall, List<Sign> signs, List<String> unsure,
		Set<LoadKind> loads) {

	public WalkFacts {
		signs = List.copyOf(signs);
		unsure = List.copyOf(unsure);
		loads = Collections.unmodifiableSet(new TreeSet<>(loads));
	}

	/**
	 * A walk of the usual load.
	 * @param date the day of the walk
	 * @param start when it began
	 * @param minutes how long it was, in minutes
	 * @param minutesLow the least it was, in minutes
	 * @param minutesHigh the most it was, in minutes
	 * @param distanceMetres how far, in metres
	 * @param minutesEstimated whether the minutes were worked out
	 * @param overall how the dog was after it
	 * @param signs signs seen and signs denied
	 * @param unsure paths of fields that nobody is sure of
	 */
	public WalkFacts(LocalDate date, @Nullable LocalTime start, @Nullable Double minutes, @Nullable Double minutesLow,
			@Nullable Double minutesHigh, @Nullable Double distanceMetres, boolean minutesEstimated,
			@Nullable Overall overall, List<Sign> signs, List<String> unsure) {
		this(date, start, minutes, minutesLow, minutesHigh, distanceMetres, minutesEstimated, overall, signs, unsure,
				Set.of());
	}

	/**
	 * The same walk with other minutes, told exactly.
	 * @param right the right minutes
	 * @return the changed facts
	 */
	public WalkFacts withMinutes(double right) {
		List<String> stillUnsure = this.unsure.stream().filter((path) -> !path.endsWith("minutes")).toList();
		return new WalkFacts(this.date, this.start, right, right, right, this.distanceMetres, false, this.overall,
				this.signs, stillUnsure, this.loads);
	}

	/**
	 * The same walk with when it began.
	 * @param right when
	 * @return the changed facts
	 */
	public WalkFacts withStart(@Nullable LocalTime right) {
		return new WalkFacts(this.date, right, this.minutes, this.minutesLow, this.minutesHigh, this.distanceMetres,
				this.minutesEstimated, this.overall, this.signs, this.unsure, this.loads);
	}

	/**
	 * The same walk with another distance.
	 * @param right the right distance, in metres
	 * @return the changed facts
	 */
	public WalkFacts withDistance(double right) {
		return new WalkFacts(this.date, this.start, this.minutes, this.minutesLow, this.minutesHigh, right,
				this.minutesEstimated, this.overall, this.signs, this.unsure, this.loads);
	}

	/**
	 * The same walk with other signs.
	 * @param right all signs
	 * @return the changed facts
	 */
	public WalkFacts withSigns(List<Sign> right) {
		return new WalkFacts(this.date, this.start, this.minutes, this.minutesLow, this.minutesHigh,
				this.distanceMetres, this.minutesEstimated, this.overall, right, this.unsure, this.loads);
	}

	/**
	 * The same walk with how the dog was after it.
	 * @param right how it was
	 * @return the changed facts
	 */
	public WalkFacts withOverall(@Nullable Overall right) {
		return new WalkFacts(this.date, this.start, this.minutes, this.minutesLow, this.minutesHigh,
				this.distanceMetres, this.minutesEstimated, right, this.signs, this.unsure, this.loads);
	}

	/**
	 * The same walk with other paths that nobody is sure of.
	 * @param paths the paths
	 * @return the changed facts
	 */
	public WalkFacts withUnsure(List<String> paths) {
		return new WalkFacts(this.date, this.start, this.minutes, this.minutesLow, this.minutesHigh,
				this.distanceMetres, this.minutesEstimated, this.overall, this.signs, paths, this.loads);
	}

	/**
	 * The same walk with other loads.
	 * @param right all loads
	 * @return the changed facts
	 */
	public WalkFacts withLoads(Set<LoadKind> right) {
		return new WalkFacts(this.date, this.start, this.minutes, this.minutesLow, this.minutesHigh,
				this.distanceMetres, this.minutesEstimated, this.overall, this.signs, this.unsure, right);
	}

}

package measuredwalk.tolerance;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;

import measuredwalk.signs.Overall;
import measuredwalk.signs.Sign;
import org.jspecify.annotations.Nullable;

/**
 * Something that the belief about a dog's tolerance depends on. What was not answered has
 * no event.
 */
public sealed interface ToleranceEvent {

	/**
	 * The day that it speaks of, in the household's zone.
	 * @return the day
	 */
	LocalDate date();

	/**
	 * The dog was taken on.
	 *
	 * @param date the day
	 * @param plan the clinic's plan
	 * @param weightKg weight in kilograms, or null
	 * @param ageYears age in years, or null
	 * @param fullyGrown false while it still grows
	 * @param surgeryDate the day of its last surgery, or null
	 */
	record DogEnrolled(LocalDate date, WalkPlan plan, @Nullable Double weightKg, @Nullable Double ageYears,
			boolean fullyGrown, @Nullable LocalDate surgeryDate) implements ToleranceEvent {
	}

	/**
	 * The clinic set another plan.
	 *
	 * @param date the day
	 * @param plan the new plan
	 */
	record PlanChanged(LocalDate date, WalkPlan plan) implements ToleranceEvent {
	}

	/**
	 * A medicine was started, stopped or changed.
	 *
	 * @param date the day
	 * @param change what happened
	 * @param kind the kind of medicine, such as {@code nsaid}
	 */
	record MedicationChanged(LocalDate date, Change change, String kind) implements ToleranceEvent {

		/** What happened to the medicine. */
		public enum Change implements measuredwalk.signs.Coded {

			STARTED, STOPPED, CHANGED

		}
	}

	/**
	 * A walk was told of.
	 *
	 * @param date the day of the walk
	 * @param time when it began, or null
	 * @param minutes how long it was, in minutes, above 0
	 * @param minutesLow the least it was, at most {@code minutes}
	 * @param minutesHigh the most it was, at least {@code minutes}
	 * @param distanceMetres how far, in metres, or null
	 * @param signs what was seen and denied; empty means that none was seen
	 * @param late true when it was told more than 24 hours after
	 * @param load what made its minutes count for more, {@link Load#USUAL} by default
	 */
	record WalkTaken(LocalDate date, @Nullable LocalTime time, double minutes, double minutesLow, double minutesHigh,
			@Nullable Double distanceMetres, List<Sign> signs, boolean late, Load load) implements ToleranceEvent {

		public WalkTaken {
			signs = List.copyOf(signs);
			if (!(minutes > 0 && minutes <= 1440)) {
				throw new IllegalArgumentException("minutes must be above 0 and at most 1440, not " + minutes);
			}
		}

		/**
		 * A walk of the usual load.
		 * @param date the day of the walk
		 * @param time when it began, or null
		 * @param minutes how long it was, in minutes, above 0
		 * @param minutesLow the least it was
		 * @param minutesHigh the most it was
		 * @param distanceMetres how far, in metres, or null
		 * @param signs what was seen and denied
		 * @param late true when it was told more than 24 hours after
		 */
		public WalkTaken(LocalDate date, @Nullable LocalTime time, double minutes, double minutesLow,
				double minutesHigh, @Nullable Double distanceMetres, List<Sign> signs, boolean late) {
			this(date, time, minutes, minutesLow, minutesHigh, distanceMetres, signs, late, Load.USUAL);
		}

		/** The same walk as if it had been no harder than usual. */
		WalkTaken ofUsualLoad() {
			return this.load.isHarder() ? new WalkTaken(this.date, this.time, this.minutes, this.minutesLow,
					this.minutesHigh, this.distanceMetres, this.signs, this.late) : this;
		}

	}

	/**
	 * A morning check-in was answered. It speaks of the night before and of the walks of
	 * the day before.
	 *
	 * @param date the morning's day
	 * @param signs what was seen and denied; empty means that none was seen
	 * @param stiffMinutes minutes that stiffness took to ease, or null
	 * @param overall how the dog was against its own usual, or null
	 * @param late true when it was told more than 24 hours after
	 */
	record MorningSeen(LocalDate date, List<Sign> signs, @Nullable Double stiffMinutes, @Nullable Overall overall,
			boolean late) implements ToleranceEvent {

		public MorningSeen {
			signs = List.copyOf(signs);
		}

	}

}

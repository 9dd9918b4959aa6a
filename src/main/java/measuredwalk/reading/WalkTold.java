package measuredwalk.reading;

import java.time.LocalDate;
import java.time.LocalTime;

import org.jspecify.annotations.Nullable;

/**
 * A walk that was told of. Everything that was not said is null.
 *
 * @param minutes best single value of how long it was, in minutes; the middle of a range
 * @param minutesLow the least it was, in minutes
 * @param minutesHigh the most it was, in minutes
 * @param distanceMetres how far, in metres
 * @param start when it began, in the household's zone
 * @param date the day it was on, when that is said to be another day than the message's
 * @param relative how long against another walk, when told so
 */
public record WalkTold(@Nullable Double minutes, @Nullable Double minutesLow, @Nullable Double minutesHigh,
		@Nullable Double distanceMetres, @Nullable LocalTime start, @Nullable LocalDate date,
		@Nullable RelativeAmount relative) {

	/**
	 * The same without a day: what stands under a date is of that date.
	 * @return the walk
	 */
	public WalkTold undated() {
		return new WalkTold(this.minutes, this.minutesLow, this.minutesHigh, this.distanceMetres, this.start, null,
				this.relative);
	}

}

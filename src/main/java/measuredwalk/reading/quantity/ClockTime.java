package measuredwalk.reading.quantity;

import java.time.LocalTime;

/**
 * A time of day.
 *
 * @param span where it stands
 * @param said the time as the words have it: "7.10" is 07:10
 * @param time the time that is meant: the same, or twelve hours later when the half of
 * the day was not told and that is nearer before the time of the message
 * @param halfOfDayKnown whether the words tell morning from afternoon
 * @param bare true when it is a plain number that only stands where a time is likely ("at
 * 7")
 * @param approximate true when the words say so ("about half nine")
 */
public record ClockTime(Span span, LocalTime said, LocalTime time, boolean halfOfDayKnown, boolean bare,
		boolean approximate) implements Quantity {
}

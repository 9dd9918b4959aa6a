package measuredwalk.reading.quantity;

import org.jspecify.annotations.Nullable;

/**
 * A day of the calendar: "the 4th of May", "12/3", "3 March".
 *
 * @param span where it stands
 * @param day the day of the month, or null when not told
 * @param month the month from 1 to 12, or null when not told
 * @param year the year, or null when not told
 */
public record DateMention(Span span, @Nullable Integer day, @Nullable Integer month,
		@Nullable Integer year) implements Quantity {
}

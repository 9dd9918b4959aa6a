package measuredwalk.reading.quantity;

import java.time.LocalTime;

/**
 * A part of the day: "this morning", "late afternoon".
 *
 * @param span where it stands
 * @param name its name in lower case, such as "morning"
 * @param start when it usually begins
 * @param end when it usually ends
 */
public record DayPart(Span span, String name, LocalTime start, LocalTime end) implements Quantity {
}

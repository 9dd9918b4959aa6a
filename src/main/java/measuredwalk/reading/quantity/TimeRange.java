package measuredwalk.reading.quantity;

/**
 * From one time of day to another: "left 7.10 back 7.35".
 *
 * @param span where it stands
 * @param from when it began
 * @param till when it ended
 * @param seconds how long that is, less than a day
 */
public record TimeRange(Span span, ClockTime from, ClockTime till, long seconds) implements Quantity {
}

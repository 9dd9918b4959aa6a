package measuredwalk.reading.quantity;

/**
 * How long: "25 min", "an hour and a half".
 *
 * @param span where it stands
 * @param seconds how many seconds, each time
 * @param times how often, 1 unless told so as in "2 x 10 min"
 */
public record Duration(Span span, Amount seconds, int times) implements Quantity {
}

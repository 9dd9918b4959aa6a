package measuredwalk.reading.quantity;

/**
 * How far.
 *
 * @param span where it stands
 * @param metres how many metres, each time
 * @param times how often, 1 unless told so as in "2 x 400 m"
 */
public record Distance(Span span, Amount metres, int times) implements Quantity {
}

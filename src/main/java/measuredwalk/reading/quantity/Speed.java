package measuredwalk.reading.quantity;

/**
 * How fast.
 *
 * @param span where it stands
 * @param metresPerSecond how many metres a second
 */
public record Speed(Span span, Amount metresPerSecond) implements Quantity {
}

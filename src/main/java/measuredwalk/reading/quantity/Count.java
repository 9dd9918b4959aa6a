package measuredwalk.reading.quantity;

/**
 * How often: "twice", "3 times", "2 x".
 *
 * @param span where it stands
 * @param times how often
 */
public record Count(Span span, Amount times) implements Quantity {
}

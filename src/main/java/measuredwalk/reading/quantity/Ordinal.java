package measuredwalk.reading.quantity;

/**
 * A place in a row: "the second lamppost", "3rd".
 *
 * @param span where it stands
 * @param place the place, from 1
 */
public record Ordinal(Span span, Amount place) implements Quantity {
}

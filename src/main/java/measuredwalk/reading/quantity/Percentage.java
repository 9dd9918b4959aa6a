package measuredwalk.reading.quantity;

/**
 * So many in a hundred.
 *
 * @param span where it stands
 * @param percent how many
 */
public record Percentage(Span span, Amount percent) implements Quantity {
}

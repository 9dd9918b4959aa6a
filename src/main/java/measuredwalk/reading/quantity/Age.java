package measuredwalk.reading.quantity;

/**
 * How old: "12 years old", "she is 13".
 *
 * @param span where it stands
 * @param years how many years
 */
public record Age(Span span, Amount years) implements Quantity {
}

package measuredwalk.reading.quantity;

/**
 * A price.
 *
 * @param span where it stands
 * @param amount how much
 * @param currency its sign or name as it was written, such as "£"
 */
public record Money(Span span, Amount amount, String currency) implements Quantity {
}

package measuredwalk.reading.quantity;

/**
 * A number without any unit.
 *
 * @param span where it stands
 * @param amount the number
 * @param times how often, 1 unless told so as in "2 x 10"
 */
public record BareNumber(Span span, Amount amount, int times) implements Quantity {
}

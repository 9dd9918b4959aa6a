package measuredwalk.reading.quantity;

/**
 * How heavy.
 *
 * @param span where it stands
 * @param kilograms how many kilograms
 */
public record Weight(Span span, Amount kilograms) implements Quantity {
}

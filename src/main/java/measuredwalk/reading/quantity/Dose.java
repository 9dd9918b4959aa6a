package measuredwalk.reading.quantity;

/**
 * An amount of medicine or fluid: "half a tablet", "40 mg", "5 ml".
 *
 * @param span where it stands
 * @param amount how much of the unit
 * @param unit the unit, such as "tablet" or "mg"
 */
public record Dose(Span span, Amount amount, String unit) implements Quantity {
}

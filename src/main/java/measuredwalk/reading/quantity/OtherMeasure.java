package measuredwalk.reading.quantity;

/**
 * A measure that is none of the others: "five blocks", "2 acres", "3000 steps".
 *
 * @param span where it stands
 * @param amount how much of the unit
 * @param unit the unit, such as "block" or "step"
 */
public record OtherMeasure(Span span, Amount amount, String unit) implements Quantity {
}

package measuredwalk.reading.quantity;

/**
 * A day or a week told of as a whole: "all day", "the full week". It says when something
 * was, seldom how long a walk took.
 *
 * @param span where it stands
 * @param name "day" or "week"
 * @param seconds how long that is
 */
public record WholeDay(Span span, String name, long seconds) implements Quantity {
}

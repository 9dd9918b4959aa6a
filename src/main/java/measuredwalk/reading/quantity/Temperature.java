package measuredwalk.reading.quantity;

import org.jspecify.annotations.Nullable;

/**
 * A temperature.
 *
 * @param span where it stands
 * @param degrees how many degrees
 * @param scale of which scale, or null when not told
 */
public record Temperature(Span span, Amount degrees, @Nullable Scale scale) implements Quantity {
}

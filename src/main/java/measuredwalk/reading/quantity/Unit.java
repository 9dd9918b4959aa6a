package measuredwalk.reading.quantity;

import org.jspecify.annotations.Nullable;

/**
 * A unit of measure.
 *
 * @param dimension what it measures
 * @param size how large it is in the base unit of the dimension
 * @param name its name in the singular
 * @param other what the same sign may also mean, as m is minutes or metres
 */
record Unit(Dimension dimension, double size, String name, @Nullable Unit other) {

	boolean is(Dimension wanted) {
		return this.dimension == wanted;
	}

}

package measuredwalk.pictures;

import java.awt.Color;
import java.util.List;

import org.jspecify.annotations.Nullable;

/**
 * How a mark is filled and outlined.
 *
 * @param fill the colour inside, or null for none
 * @param stroke the colour of its line, or null for none
 * @param width width of the line
 * @param dash lengths of strokes and gaps, empty for a full line
 */
record Look(@Nullable Color fill, @Nullable Color stroke, double width, List<Double> dash) {

	static Look filled(Color colour) {
		return new Look(colour, null, 0, List.of());
	}

	static Look lined(Color colour, double width) {
		return new Look(null, colour, width, List.of());
	}

	static Look dashed(Color colour, double width, double stroke, double gap) {
		return new Look(null, colour, width, List.of(stroke, gap));
	}

	/** Hollow: the paper's colour inside a line. */
	static Look hollow(Color colour, double width) {
		return new Look(Style.PAPER, colour, width, List.of());
	}

}

package measuredwalk.pictures;

import java.awt.Color;
import java.util.List;

/** The shapes of marks, the same on all pictures. */
final class Marks {

	private static final double HATCH = 4;

	private Marks() {
	}

	/** A walk on which signs were seen. */
	static void diamond(Surface surface, double x, double y, double size) {
		surface.polygon(
				List.of(new Spot(x - size, y), new Spot(x, y - size), new Spot(x + size, y), new Spot(x, y + size)),
				Look.hollow(Style.SIGN, 1.6));
	}

	/** A walk on which nothing was seen. */
	static void dot(Surface surface, double x, double y, double size) {
		surface.disc(new Spot(x, y), size * 0.7, Look.filled(Style.INK));
	}

	/** How a morning was: a small dot, a hollow or a full triangle, or nothing. */
	static void morning(Surface surface, PictureDay.Morning morning, double x, double y, double size) {
		switch (morning) {
			case CLEAR -> surface.disc(new Spot(x, y), Math.min(2.8, size * 0.45), Look.filled(Style.FAINT));
			case SOME_SIGNS -> triangle(surface, x, y, size, Look.hollow(Style.SIGN, 1.3));
			case WORSE -> triangle(surface, x, y, size, Look.filled(Style.SIGN));
			case NOT_TOLD -> {
			}
		}
	}

	private static void triangle(Surface surface, double x, double y, double size, Look look) {
		surface.polygon(List.of(new Spot(x - size, y + size * 0.85), new Spot(x, y - size),
				new Spot(x + size, y + size * 0.85)), look);
	}

	static void box(Surface surface, double x, double y, double width, double height, Look look) {
		surface.polygon(List.of(new Spot(x, y), new Spot(x + width, y), new Spot(x + width, y + height),
				new Spot(x, y + height)), look);
	}

	/** A box with slanting lines, told from a full one without colour. */
	static void hatchedBox(Surface surface, double x, double y, double width, double height, Color colour) {
		box(surface, x, y, width, height, Look.hollow(colour, 1.2));
		for (double sum = HATCH; sum < width + height; sum += HATCH) {
			double fromX = Math.max(0, sum - height);
			double toX = Math.min(width, sum);
			surface.line(x + fromX, y + sum - fromX, x + toX, y + sum - toX, Look.lined(colour, 1));
		}
	}

}

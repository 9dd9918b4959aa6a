package measuredwalk.pictures;

import java.awt.Color;
import java.util.List;

/** What a picture is drawn on. */
interface Surface {

	void polygon(List<Spot> corners, Look look);

	void polyline(List<Spot> spots, Look look);

	void disc(Spot centre, double radius, Look look);

	void words(Spot at, String text, double size, Anchor anchor, Color colour);

	/** Draws marks that share a title, shown where the surface can. */
	void titled(String title, Runnable marks);

	default void line(double x1, double y1, double x2, double y2, Look look) {
		polyline(List.of(new Spot(x1, y1), new Spot(x2, y2)), look);
	}

}

package measuredwalk.pictures;

import java.awt.Color;
import java.awt.font.FontRenderContext;
import java.util.List;

/** Draws nothing, but notes how far marks reach. */
final class Extent implements Surface {

	private static final FontRenderContext PLAIN = new FontRenderContext(null, true, true);

	private double leftmost = Double.MAX_VALUE;

	private double rightmost;

	private double lowest;

	double leftmost() {
		return this.leftmost;
	}

	double rightmost() {
		return this.rightmost;
	}

	double lowest() {
		return this.lowest;
	}

	@Override
	public void polygon(List<Spot> corners, Look look) {
		corners.forEach((spot) -> reach(spot.x(), spot.x(), spot.y()));
	}

	@Override
	public void polyline(List<Spot> spots, Look look) {
		polygon(spots, look);
	}

	@Override
	public void disc(Spot centre, double radius, Look look) {
		reach(centre.x() - radius, centre.x() + radius, centre.y() + radius);
	}

	@Override
	public void words(Spot at, String text, double size, Anchor anchor, Color colour) {
		double width = PictureFont.ofSize(size).getStringBounds(text, PLAIN).getWidth();
		double left = switch (anchor) {
			case START -> at.x();
			case MIDDLE -> at.x() - width / 2;
			case END -> at.x() - width;
		};
		reach(left, left + width, at.y());
	}

	@Override
	public void titled(String title, Runnable marks) {
		marks.run();
	}

	private void reach(double left, double right, double bottom) {
		this.leftmost = Math.min(this.leftmost, left);
		this.rightmost = Math.max(this.rightmost, right);
		this.lowest = Math.max(this.lowest, bottom);
	}

}

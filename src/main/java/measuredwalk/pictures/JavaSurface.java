package measuredwalk.pictures;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.List;

/** Paints with Java's own graphics: on the pixels of a PNG or on a page of a PDF. */
final class JavaSurface implements Surface {

	private final Graphics2D graphics;

	JavaSurface(Graphics2D graphics) {
		this.graphics = graphics;
		graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
		graphics.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
		graphics.setRenderingHint(RenderingHints.KEY_FRACTIONALMETRICS, RenderingHints.VALUE_FRACTIONALMETRICS_ON);
		graphics.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
	}

	@Override
	public void polygon(List<Spot> corners, Look look) {
		Path2D path = path(corners);
		path.closePath();
		paint(path, look);
	}

	@Override
	public void polyline(List<Spot> spots, Look look) {
		if (!spots.isEmpty()) {
			paint(path(spots), look);
		}
	}

	@Override
	public void disc(Spot centre, double radius, Look look) {
		paint(new Ellipse2D.Double(centre.x() - radius, centre.y() - radius, 2 * radius, 2 * radius), look);
	}

	@Override
	public void words(Spot at, String text, double size, Anchor anchor, Color colour) {
		Font font = PictureFont.ofSize(size);
		this.graphics.setFont(font);
		this.graphics.setColor(colour);
		Rectangle2D box = font.getStringBounds(text, this.graphics.getFontRenderContext());
		double shift = switch (anchor) {
			case START -> 0;
			case MIDDLE -> box.getWidth() / 2;
			case END -> box.getWidth();
		};
		this.graphics.drawString(text, (float) (at.x() - shift), (float) at.y());
	}

	@Override
	public void titled(String title, Runnable marks) {
		marks.run();
	}

	private static Path2D path(List<Spot> spots) {
		Path2D path = new Path2D.Double();
		path.moveTo(spots.get(0).x(), spots.get(0).y());
		spots.stream().skip(1).forEach((spot) -> path.lineTo(spot.x(), spot.y()));
		return path;
	}

	private void paint(Shape shape, Look look) {
		if (look.fill() != null) {
			this.graphics.setColor(look.fill());
			this.graphics.fill(shape);
		}
		if (look.stroke() != null) {
			this.graphics.setColor(look.stroke());
			this.graphics.setStroke(stroke(look));
			this.graphics.draw(shape);
		}
	}

	private static BasicStroke stroke(Look look) {
		float width = (float) look.width();
		if (look.dash().isEmpty()) {
			return new BasicStroke(width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER);
		}
		float[] dash = { look.dash().get(0).floatValue(), look.dash().get(1).floatValue() };
		return new BasicStroke(width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 10, dash, 0);
	}

}

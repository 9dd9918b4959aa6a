package measuredwalk.pictures;

import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.function.Consumer;

import javax.imageio.ImageIO;

/** A picture that can be drawn as SVG, as PNG or on a page, and said in words. */
public final class Picture {

	private final int width;

	private final int height;

	private final String summary;

	private final List<String> lines;

	private final Consumer<Surface> drawing;

	Picture(int width, int height, String summary, List<String> lines, Consumer<Surface> drawing) {
		this.width = width;
		this.height = height;
		this.summary = summary;
		this.lines = List.copyOf(lines);
		this.drawing = drawing;
	}

	/**
	 * How wide it is.
	 * @return in pixels at scale 1
	 */
	public int width() {
		return this.width;
	}

	/**
	 * How high it is.
	 * @return in pixels at scale 1
	 */
	public int height() {
		return this.height;
	}

	/**
	 * What it shows, in one sentence; also the alternative text of the SVG.
	 * @return the sentence
	 */
	public String summary() {
		return this.summary;
	}

	/**
	 * All that it shows, in words.
	 * @return one line for each day on which anything is to be told, the first day first
	 */
	public List<String> lines() {
		return this.lines;
	}

	/**
	 * The picture as SVG, to stand in a page or in a file of its own.
	 * @return an svg element without scripts, links or style attributes
	 */
	public String svg() {
		SvgSurface surface = new SvgSurface(this.width, this.height, this.summary);
		drawOn(surface);
		return surface.finished();
	}

	/**
	 * The picture as PNG.
	 * @param scale pixels for each unit, above 0 and at most 8; 2 suits phones
	 * @return the bytes of the file
	 * @throws IllegalArgumentException when the scale is out of range
	 */
	public byte[] png(double scale) {
		if (!(scale > 0 && scale <= 8)) {
			throw new IllegalArgumentException("the scale must be above 0 and at most 8, not " + scale);
		}
		BufferedImage image = new BufferedImage((int) Math.ceil(this.width * scale),
				(int) Math.ceil(this.height * scale), BufferedImage.TYPE_INT_RGB);
		Graphics2D graphics = image.createGraphics();
		graphics.scale(scale, scale);
		paint(graphics);
		graphics.dispose();
		return bytes(image);
	}

	/**
	 * Paints the picture at the origin of a graphics context, such as a page's.
	 * @param graphics the context, in units of the picture
	 */
	public void paint(Graphics2D graphics) {
		drawOn(new JavaSurface(graphics));
	}

	void drawOn(Surface surface) {
		surface.polygon(List.of(new Spot(0, 0), new Spot(this.width, 0), new Spot(this.width, this.height),
				new Spot(0, this.height)), Look.filled(Style.PAPER));
		this.drawing.accept(surface);
	}

	private static byte[] bytes(BufferedImage image) {
		ByteArrayOutputStream bytes = new ByteArrayOutputStream();
		try {
			ImageIO.write(image, "png", bytes);
		}
		catch (IOException ex) {
			throw new UncheckedIOException("A picture could not be written as PNG.", ex);
		}
		return bytes.toByteArray();
	}

}

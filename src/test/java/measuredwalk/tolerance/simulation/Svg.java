package measuredwalk.tolerance.simulation;

import java.util.Locale;

/** Writes plain SVG: shapes without style sheets or scripts, readable by every viewer. */
final class Svg {

	private final StringBuilder body = new StringBuilder();

	private final int width;

	private final int height;

	private final String title;

	private final String description;

	Svg(int width, int height, String title, String description) {
		this.width = width;
		this.height = height;
		this.title = title;
		this.description = description;
	}

	void path(String data, String attributes) {
		this.body.append("<path d=\"").append(data).append("\" ").append(attributes).append("/>\n");
	}

	void line(double x1, double y1, double x2, double y2, String attributes) {
		path("M" + number(x1) + " " + number(y1) + "L" + number(x2) + " " + number(y2), attributes);
	}

	void text(double x, double y, String words, String attributes) {
		this.body.append("<text x=\"").append(number(x)).append("\" y=\"").append(number(y)).append("\" ");
		this.body.append(attributes).append('>').append(escaped(words)).append("</text>\n");
	}

	/** A coordinate: a tenth of a pixel is finer than any screen. */
	static String number(double coordinate) {
		String digits = String.format(Locale.ROOT, "%.1f", coordinate);
		return digits.endsWith(".0") ? digits.substring(0, digits.length() - 2) : digits;
	}

	private static String escaped(String words) {
		return words.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
	}

	@Override
	public String toString() {
		return "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 " + this.width + " " + this.height
				+ "\" role=\"img\" aria-labelledby=\"title desc\" font-family=\"sans-serif\" font-size=\"12\">\n"
				+ "<title id=\"title\">" + escaped(this.title) + "</title>\n<desc id=\"desc\">"
				+ escaped(this.description) + "</desc>\n<rect width=\"100%\" height=\"100%\" fill=\"#fff\"/>\n"
				+ this.body + "</svg>\n";
	}

}

package measuredwalk.pictures;

import java.awt.Color;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

import org.jspecify.annotations.Nullable;

/**
 * Writes SVG. Looks stand in presentation attributes: the pages' content policy forbids
 * style attributes.
 */
final class SvgSurface implements Surface {

	private final StringBuilder svg = new StringBuilder();

	SvgSurface(double width, double height, String alt) {
		add("<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 %.0f %.0f\" role=\"img\" aria-label=\"%s\""
				+ " font-family=\"Liberation Sans, Arial, Helvetica, sans-serif\">", width, height, escaped(alt));
	}

	String finished() {
		return this.svg + "</svg>";
	}

	@Override
	public void polygon(List<Spot> corners, Look look) {
		add("<polygon points=\"%s\"%s/>", points(corners), attributes(look));
	}

	@Override
	public void polyline(List<Spot> spots, Look look) {
		add("<polyline points=\"%s\"%s/>", points(spots), attributes(look));
	}

	@Override
	public void disc(Spot centre, double radius, Look look) {
		add("<circle cx=\"%.1f\" cy=\"%.1f\" r=\"%.1f\"%s/>", centre.x(), centre.y(), radius, attributes(look));
	}

	@Override
	public void words(Spot at, String text, double size, Anchor anchor, Color colour) {
		add("<text x=\"%.1f\" y=\"%.1f\" font-size=\"%.0f\" text-anchor=\"%s\" fill=\"%s\">%s</text>", at.x(), at.y(),
				size, anchor.name().toLowerCase(Locale.ROOT), code(colour), escaped(text));
	}

	@Override
	public void titled(String title, Runnable marks) {
		add("<g><title>%s</title>", escaped(title));
		marks.run();
		add("</g>");
	}

	private static String points(List<Spot> spots) {
		return spots.stream()
			.map((spot) -> String.format(Locale.ROOT, "%.1f,%.1f", spot.x(), spot.y()))
			.collect(Collectors.joining(" "));
	}

	private static String attributes(Look look) {
		String attributes = " fill=\"" + code(look.fill()) + "\"";
		if (look.stroke() != null) {
			attributes += String.format(Locale.ROOT, " stroke=\"%s\" stroke-width=\"%.1f\"", code(look.stroke()),
					look.width());
		}
		if (!look.dash().isEmpty()) {
			attributes += " stroke-dasharray=\""
					+ look.dash().stream().map(String::valueOf).collect(Collectors.joining(" ")) + "\"";
		}
		return attributes;
	}

	private static String code(@Nullable Color colour) {
		return (colour != null) ? String.format(Locale.ROOT, "#%06x", colour.getRGB() & 0xffffff) : "none";
	}

	/** Control characters, which XML cannot hold, are left out. */
	private static String escaped(String text) {
		return text.replaceAll("\\p{Cntrl}", " ")
			.replace("&", "&amp;")
			.replace("<", "&lt;")
			.replace(">", "&gt;")
			.replace("\"", "&quot;");
	}

	private void add(String text, Object... places) {
		this.svg.append(String.format(Locale.ROOT, text, places));
	}

}

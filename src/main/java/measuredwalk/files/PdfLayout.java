package measuredwalk.files;

import java.awt.Shape;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Map;

import com.openhtmltopdf.extend.FSObjectDrawer;
import com.openhtmltopdf.extend.FSObjectDrawerFactory;
import com.openhtmltopdf.extend.OutputDevice;
import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.PageSizeUnits;
import com.openhtmltopdf.outputdevice.helper.ExternalResourceControlPriority;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.render.RenderingContext;
import measuredwalk.pictures.Picture;
import org.jspecify.annotations.Nullable;
import org.w3c.dom.Element;

/**
 * Lays out XHTML as PDF. Nothing is fetched: every address is refused, and what is drawn
 * is handed in.
 */
public final class PdfLayout {

	private static final String FONT = "/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf";

	/** What XML 1.0 cannot hold. */
	private static final String NOT_XML = "[^\\x{9}\\x{A}\\x{D}\\x{20}-\\x{D7FF}\\x{E000}-\\x{FFFD}\\x{10000}-\\x{10FFFF}]";

	private PdfLayout() {
	}

	/**
	 * Lays out a page or more.
	 * @param xhtml what stands in it; what XML cannot hold is left out
	 * @param picture what is painted where an {@code object} has the type
	 * {@code picture/timeline}
	 * @param paper what it is printed on
	 * @return the bytes of the file
	 */
	public static byte[] laidOut(String xhtml, Picture picture, PaperSize paper) {
		ByteArrayOutputStream pdf = new ByteArrayOutputStream();
		PdfRendererBuilder builder = new PdfRendererBuilder()
			.useFont(() -> PdfLayout.class.getResourceAsStream(FONT), "Liberation Sans")
			.useDefaultPageSize(paper.widthMillimetres(), paper.heightMillimetres(), PageSizeUnits.MM)
			.useUriResolver((base, address) -> null)
			.useExternalResourceAccessControl((address, kind) -> false,
					ExternalResourceControlPriority.RUN_BEFORE_RESOLVING_URI)
			.useObjectDrawerFactory(new Painted(picture));
		builder.usePdfUaAccessibility(true);
		builder.withHtmlContent(xhtml.replaceAll(NOT_XML, " "), null).toStream(pdf);
		try {
			builder.run();
		}
		catch (IOException ex) {
			throw new UncheckedIOException("A page could not be laid out as PDF.", ex);
		}
		return pdf.toByteArray();
	}

	/** Paints the picture where the page has an object for it. */
	private record Painted(Picture picture) implements FSObjectDrawerFactory, FSObjectDrawer {

		@Override
		public @Nullable FSObjectDrawer createDrawer(Element element) {
			return isReplacedObject(element) ? this : null;
		}

		@Override
		public boolean isReplacedObject(Element element) {
			return element.getAttribute("type").equals("picture/timeline");
		}

		@Override
		public @Nullable Map<Shape, String> drawObject(Element element, double x, double y, double width, double height,
				OutputDevice device, RenderingContext context, int dotsPerPixel) {
			device.drawWithGraphics((float) x, (float) y, (float) width / dotsPerPixel, (float) height / dotsPerPixel,
					(graphics) -> {
						double scale = width / dotsPerPixel / this.picture.width();
						graphics.scale(scale, scale);
						this.picture.paint(graphics);
					});
			return null;
		}

	}

}

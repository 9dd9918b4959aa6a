package measuredwalk.clinic.pages;

import java.awt.Shape;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Locale;
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
import org.springframework.stereotype.Component;
import org.thymeleaf.ITemplateEngine;
import org.thymeleaf.context.Context;
import org.w3c.dom.Element;

/**
 * Lays out a report as PDF. Nothing is fetched: every address is refused, and what is
 * drawn comes with the report itself.
 */
@Component
class ReportPdf {

	private static final String FONT = "/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf";

	/** What XML 1.0 cannot hold. */
	private static final String NOT_XML = "[^\\x{9}\\x{A}\\x{D}\\x{20}-\\x{D7FF}\\x{E000}-\\x{FFFD}\\x{10000}-\\x{10FFFF}]";

	private final ITemplateEngine templates;

	ReportPdf(ITemplateEngine templates) {
		this.templates = templates;
	}

	byte[] of(Reports.WithPicture report, PaperSize paper) {
		Context context = new Context(Locale.UK, Map.of("report", report.report(), "printed", true));
		return laidOut(this.templates.process("clinic/report-print", context), report.picture(), paper);
	}

	/** Lays out XHTML; visible for the test that it fetches nothing. */
	static byte[] laidOut(String xhtml, Picture picture, PaperSize paper) {
		ByteArrayOutputStream pdf = new ByteArrayOutputStream();
		PdfRendererBuilder builder = new PdfRendererBuilder()
			.useFont(() -> ReportPdf.class.getResourceAsStream(FONT), "Liberation Sans")
			.useDefaultPageSize(paper.widthMillimetres(), paper.heightMillimetres(), PageSizeUnits.MM)
			.useUriResolver((base, address) -> null)
			.useExternalResourceAccessControl((address, kind) -> false,
					ExternalResourceControlPriority.RUN_BEFORE_RESOLVING_URI)
			.useObjectDrawerFactory(new Timeline(picture));
		builder.usePdfUaAccessibility(true);
		builder.withHtmlContent(xhtml.replaceAll(NOT_XML, " "), null).toStream(pdf);
		try {
			builder.run();
		}
		catch (IOException ex) {
			throw new UncheckedIOException("The report could not be laid out as PDF.", ex);
		}
		return pdf.toByteArray();
	}

	/** Paints the timeline where the page has an object for it. */
	private record Timeline(Picture picture) implements FSObjectDrawerFactory, FSObjectDrawer {

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

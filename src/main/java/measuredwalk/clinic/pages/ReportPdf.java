package measuredwalk.clinic.pages;

import java.util.Locale;
import java.util.Map;

import measuredwalk.files.PaperSize;
import measuredwalk.files.PdfLayout;
import org.springframework.stereotype.Component;
import org.thymeleaf.ITemplateEngine;
import org.thymeleaf.context.Context;

/** Lays out a report as PDF. */
@Component
class ReportPdf {

	private final ITemplateEngine templates;

	ReportPdf(ITemplateEngine templates) {
		this.templates = templates;
	}

	byte[] of(Reports.WithPicture report, PaperSize paper) {
		Context context = new Context(Locale.UK, Map.of("report", report.report(), "printed", true));
		return PdfLayout.laidOut(this.templates.process("clinic/report-print", context), report.picture(), paper);
	}

}

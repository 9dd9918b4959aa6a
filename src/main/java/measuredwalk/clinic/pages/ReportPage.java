package measuredwalk.clinic.pages;

import java.util.UUID;

import measuredwalk.clinic.access.Recorded;
import measuredwalk.files.PaperSize;
import measuredwalk.household.Dog;
import measuredwalk.household.Households;
import org.springframework.http.CacheControl;
import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;

/** The re-check report of a dog, as a page and as PDF. */
@Controller
class ReportPage {

	private static final int LONGEST_WEEKS = 8;

	private static final int SHORTEST_WEEKS = 2;

	private final Households households;

	private final Reports reports;

	private final ReportPdf pdf;

	ReportPage(Households households, Reports reports, ReportPdf pdf) {
		this.households = households;
		this.reports = reports;
		this.pdf = pdf;
	}

	@GetMapping("/clinic/dogs/{id}/report")
	@Recorded("saw a dog's report")
	String page(@PathVariable UUID id, @RequestParam(defaultValue = "6") int weeks, Model model) {
		int shown = within(weeks);
		model.addAttribute("report", this.reports.of(dog(id), shown).report());
		model.addAttribute("weeks", shown);
		return "clinic/report";
	}

	@GetMapping("/clinic/dogs/{id}/report.pdf")
	@Recorded("took along a dog's report")
	ResponseEntity<byte[]> pdf(@PathVariable UUID id, @RequestParam(defaultValue = "6") int weeks,
			@RequestParam(defaultValue = "A4") PaperSize paper) {
		Dog dog = dog(id);
		ContentDisposition name = ContentDisposition.inline()
			.filename("re-check-" + id.toString().substring(0, 8) + ".pdf")
			.build();
		return ResponseEntity.ok()
			.contentType(MediaType.APPLICATION_PDF)
			.cacheControl(CacheControl.noStore())
			.header(HttpHeaders.CONTENT_DISPOSITION, name.toString())
			.body(this.pdf.of(this.reports.of(dog, within(weeks)), paper));
	}

	private static int within(int weeks) {
		return Math.min(Math.max(SHORTEST_WEEKS, weeks), LONGEST_WEEKS);
	}

	private Dog dog(UUID id) {
		return this.households.dog(id).orElseThrow(() -> new NoSuchThing("dog"));
	}

}

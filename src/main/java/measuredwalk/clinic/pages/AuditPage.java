package measuredwalk.clinic.pages;

import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.List;

import measuredwalk.clinic.access.Recorded;
import measuredwalk.clinic.audit.AuditFigures;
import measuredwalk.clinic.audit.Audits;
import org.jspecify.annotations.Nullable;
import org.springframework.http.CacheControl;
import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;

/** How the whole caseload fares. */
@Controller
class AuditPage {

	private static final MediaType CSV = new MediaType("text", "csv", StandardCharsets.UTF_8);

	private final Audits audits;

	AuditPage(Audits audits) {
		this.audits = audits;
	}

	/**
	 * A figure with what it counts; public for the templates only.
	 *
	 * @param name what it is
	 * @param figure the figure
	 * @param meaning how it is counted
	 */
	public record Line(String name, String figure, String meaning) {
	}

	/**
	 * Alerts of a level; public for the templates only.
	 *
	 * @param level the level
	 * @param raised how many
	 * @param unseen how many nobody has seen
	 * @param median median time until seen
	 * @param longest the longest such time
	 */
	public record AlertsOfLevel(String level, int raised, int unseen, String median, String longest) {
	}

	@GetMapping("/clinic/audit")
	@Recorded("saw the audit")
	String page(Model model) {
		AuditFigures figures = this.audits.figures();
		model.addAttribute("days", Audits.DAYS);
		model.addAttribute("lines", lines(figures));
		model.addAttribute("alerts", figures.alerts().stream().map(AuditPage::alerts).toList());
		return "clinic/audit";
	}

	@GetMapping("/clinic/audit.csv")
	@Recorded("took along the audit")
	ResponseEntity<String> csv() {
		return ResponseEntity.ok()
			.contentType(CSV)
			.cacheControl(CacheControl.noStore())
			.header(HttpHeaders.CONTENT_DISPOSITION,
					ContentDisposition.attachment().filename("caseload-audit.csv").build().toString())
			.body(this.audits.asCsv());
	}

	private static List<Line> lines(AuditFigures figures) {
		return List.of(new Line("Dogs within their band", of(figures.withinBand(), figures.walked()),
				"dogs with at least half of their walks within that day's suggested range, of dogs with at least 7 walks"
						+ " told of"),
				new Line(
						"Flares per 100 dog-weeks", decimal(figures.flareRate()),
						figures.flares() + ((figures.flares() == 1) ? " flare in " : " flares in ")
								+ Math.round(figures.dogWeeks())
								+ " dog-weeks; a flare is worse than the dog's own usual into a further day"),
				new Line("Mornings answered, median dog", percent(figures.answersMedian()), "middle half of the dogs: "
						+ percent(figures.answersLow()) + " to " + percent(figures.answersHigh())));
	}

	private static AlertsOfLevel alerts(AuditFigures.AlertFigures level) {
		return new AlertsOfLevel(Wording.words(level.level()), level.raised(), level.unseen(),
				span(level.medianToSeen()), span(level.longestToSeen()));
	}

	private static String span(@Nullable Duration span) {
		return (span == null) ? "-" : Wording.span(span);
	}

	private static String of(int part, int all) {
		return (all == 0) ? "no dog with enough walks"
				: part + " of " + all + " (" + Math.round(100.0 * part / all) + " %)";
	}

	private static String percent(@Nullable Double share) {
		return (share == null) ? "-" : Math.round(100 * share) + " %";
	}

	private static String decimal(@Nullable Double figure) {
		return (figure == null) ? "-" : Wording.figure(figure);
	}

}

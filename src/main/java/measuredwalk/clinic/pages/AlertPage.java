package measuredwalk.clinic.pages;

import java.time.Duration;
import java.util.UUID;

import measuredwalk.clinic.access.Recorded;
import measuredwalk.escalation.Alert;
import measuredwalk.escalation.AlertTrend;
import measuredwalk.escalation.Alerts;
import measuredwalk.escalation.UnsentAlerts;
import measuredwalk.household.Dog;
import measuredwalk.household.Households;
import measuredwalk.pictures.Picture;
import org.springframework.http.CacheControl;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;

/** One alert with the trend that it stands in. */
@Controller
class AlertPage {

	private static final MediaType SVG = MediaType.valueOf("image/svg+xml");

	private final Alerts alerts;

	private final Households households;

	private final UnsentAlerts unsent;

	private final AlertTrend trend;

	AlertPage(Alerts alerts, Households households, UnsentAlerts unsent, AlertTrend trend) {
		this.alerts = alerts;
		this.households = households;
		this.unsent = unsent;
		this.trend = trend;
	}

	@GetMapping("/clinic/alerts/{id}")
	@Recorded("saw an alert")
	String page(@PathVariable UUID id, Model model) {
		Alert alert = alert(id);
		Dog dog = dog(alert);
		Picture picture = this.trend.of(alert, dog);
		model.addAttribute("alert", AlertLine.of(alert, dog, this.unsent.of(id).orElse(null)));
		model.addAttribute("about", DogHead.about(dog));
		model.addAttribute("trend", picture.svg());
		model.addAttribute("trendInWords", picture.summary());
		model.addAttribute("trendLines", picture.lines());
		return "clinic/alert";
	}

	/**
	 * The days before an alert hardly change, so the picture may be kept for a minute.
	 */
	@GetMapping("/clinic/alerts/{id}/trend.svg")
	ResponseEntity<String> trend(@PathVariable UUID id) {
		Alert alert = alert(id);
		return ResponseEntity.ok()
			.contentType(SVG)
			.cacheControl(CacheControl.maxAge(Duration.ofMinutes(1)).cachePrivate())
			.body(this.trend.of(alert, dog(alert)).svg());
	}

	private Alert alert(UUID id) {
		return this.alerts.one(id).orElseThrow(() -> new NoSuchThing("alert"));
	}

	private Dog dog(Alert alert) {
		return this.households.dog(alert.dogId()).orElseThrow(() -> new NoSuchThing("dog"));
	}

}

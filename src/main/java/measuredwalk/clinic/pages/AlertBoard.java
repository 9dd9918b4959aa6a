package measuredwalk.clinic.pages;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;

import measuredwalk.escalation.Alert;
import measuredwalk.escalation.AlertStatus;
import measuredwalk.escalation.Alerts;
import measuredwalk.escalation.UnsentAlerts;
import measuredwalk.household.Dog;
import measuredwalk.household.Households;
import org.springframework.stereotype.Component;
import org.springframework.ui.Model;

/**
 * The alerts that are not closed: those that nobody has seen first, the gravest first.
 */
@Component
class AlertBoard {

	private final Alerts alerts;

	private final Households households;

	private final UnsentAlerts unsent;

	AlertBoard(Alerts alerts, Households households, UnsentAlerts unsent) {
		this.unsent = unsent;
		this.alerts = alerts;
		this.households = households;
	}

	/**
	 * Puts the alerts on a page.
	 * @return a mark that changes when any of them does
	 */
	String show(Model model) {
		Map<UUID, Optional<Dog>> dogs = new HashMap<>();
		List<Alert> open = Stream
			.concat(this.alerts.list(AlertStatus.OPEN).stream(), this.alerts.list(AlertStatus.ACKNOWLEDGED).stream())
			.sorted(Comparator.comparing(Alert::status)
				.thenComparing(Comparator.comparing(Alert::level).reversed())
				.thenComparing(Comparator.comparing(Alert::raisedAt).reversed()))
			.toList();
		List<AlertLine> lines = open.stream()
			.flatMap((alert) -> dogs.computeIfAbsent(alert.dogId(), this.households::dog)
				.stream()
				.map((dog) -> AlertLine.of(alert, dog, this.unsent.of(alert.id()).orElse(null))))
			.toList();
		String mark = Integer.toHexString(lines.hashCode());
		model.addAttribute("alerts", lines);
		model.addAttribute("alertMark", mark);
		model.addAttribute("alertsInWords", words(lines));
		return mark;
	}

	private static String words(List<AlertLine> lines) {
		long open = lines.stream().filter(AlertLine::open).count();
		if (open == 0) {
			return "No alert waits to be seen.";
		}
		AlertLine first = lines.get(0);
		return open + ((open == 1) ? " alert waits" : " alerts wait") + " to be seen. First: " + first.levelWords()
				+ ", " + first.dogName() + ".";
	}

}

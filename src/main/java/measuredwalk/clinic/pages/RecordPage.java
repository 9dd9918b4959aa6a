package measuredwalk.clinic.pages;

import java.time.ZoneOffset;
import java.util.HashMap;
import java.util.Map;
import java.util.UUID;
import java.util.regex.Pattern;

import measuredwalk.clinic.access.AccessRecord;
import measuredwalk.escalation.Alerts;
import measuredwalk.household.Dog;
import measuredwalk.household.Households;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** Who saw and changed what, for administrators. */
@Controller
class RecordPage {

	private static final int MOST_SHOWN = 300;

	private static final Pattern NUMBER = Pattern.compile("[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}");

	private final AccessRecord record;

	private final Households households;

	private final Alerts alerts;

	RecordPage(AccessRecord record, Households households, Alerts alerts) {
		this.households = households;
		this.alerts = alerts;
		this.record = record;
	}

	/**
	 * A line of the record; public for the templates only.
	 *
	 * @param at when, in words
	 * @param staff who
	 * @param what what was seen or done
	 * @param about what about, for the address
	 * @param shown the same in words
	 */
	public record RecordLine(String at, String staff, String what, String about, String shown) {
	}

	@GetMapping("/clinic/record")
	String record(@RequestParam(defaultValue = "") String about, Model model) {
		Map<String, String> names = new HashMap<>();
		model.addAttribute("lines",
				this.record.newest(about, MOST_SHOWN)
					.stream()
					.map((line) -> new RecordLine(Wording.moment(line.at(), ZoneOffset.UTC), line.staff(), line.what(),
							line.about(), names.computeIfAbsent(line.about(), this::shown)))
					.toList());
		return "clinic/record";
	}

	/** A dog by its name; what is erased has its number only. */
	private String shown(String about) {
		if (!NUMBER.matcher(about).matches()) {
			return about;
		}
		UUID id = UUID.fromString(about);
		return this.households.dog(id)
			.or(() -> this.alerts.one(id).flatMap((alert) -> this.households.dog(alert.dogId())))
			.map(Dog::name)
			.orElse(about);
	}

}

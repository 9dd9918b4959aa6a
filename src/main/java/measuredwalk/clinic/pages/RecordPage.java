package measuredwalk.clinic.pages;

import java.time.ZoneOffset;

import measuredwalk.clinic.access.AccessRecord;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** Who saw and changed what, for administrators. */
@Controller
class RecordPage {

	private static final int MOST_SHOWN = 300;

	private final AccessRecord record;

	RecordPage(AccessRecord record) {
		this.record = record;
	}

	/**
	 * A line of the record; public for the templates only.
	 *
	 * @param at when, in words
	 * @param staff who
	 * @param what what was seen or done
	 * @param about what about
	 */
	public record RecordLine(String at, String staff, String what, String about) {
	}

	@GetMapping("/clinic/record")
	String record(@RequestParam(defaultValue = "") String about, Model model) {
		model.addAttribute("lines",
				this.record.newest(about, MOST_SHOWN)
					.stream()
					.map((line) -> new RecordLine(Wording.moment(line.at(), ZoneOffset.UTC), line.staff(), line.what(),
							line.about()))
					.toList());
		return "clinic/record";
	}

}

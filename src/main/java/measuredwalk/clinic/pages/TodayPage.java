package measuredwalk.clinic.pages;

import java.security.Principal;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;

import measuredwalk.clinic.access.AccessRecord;
import measuredwalk.clinic.access.Recorded;
import measuredwalk.clinic.caseload.Caseload;
import measuredwalk.clinic.caseload.Concern;
import measuredwalk.clinic.caseload.DogStanding;
import measuredwalk.escalation.Alert;
import measuredwalk.escalation.Alerts;
import measuredwalk.household.Dog;
import measuredwalk.household.Households;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** Who needs the clinic today. */
@Controller
class TodayPage {

	/** Longer than this without a word is silence. Common practice, no source. */
	private static final Duration SILENT_AFTER = Duration.ofDays(3);

	private static final int LONGEST_NOTE = 2000;

	private final AlertBoard board;

	private final DeadLetterBoard deadLetters;

	private final Alerts alerts;

	private final Caseload caseload;

	private final Households households;

	private final AccessRecord record;

	private final Clock clock;

	TodayPage(AlertBoard board, DeadLetterBoard deadLetters, Alerts alerts, Caseload caseload, Households households,
			AccessRecord record, Clock clock) {
		this.board = board;
		this.deadLetters = deadLetters;
		this.alerts = alerts;
		this.caseload = caseload;
		this.households = households;
		this.record = record;
		this.clock = clock;
	}

	@GetMapping("/clinic")
	@Recorded("saw today's page")
	String today(Model model) {
		this.board.show(model);
		Map<UUID, Dog> dogs = this.households.dogs().stream().collect(Collectors.toMap(Dog::id, Function.identity()));
		List<DogStanding> standings = this.caseload.all()
			.stream()
			.filter((each) -> dogs.containsKey(each.dogId()))
			.toList();
		Instant silentSince = this.clock.instant().minus(SILENT_AFTER);
		List<DogLine> silent = standings.stream()
			.filter((each) -> silent(each, dogs.get(each.dogId()), silentSince))
			.map((each) -> DogLine.of(dogs.get(each.dogId()), each))
			.toList();
		List<DogLine> concerns = standings.stream()
			.filter((each) -> each.concern() != Concern.STEADY)
			.map((each) -> DogLine.of(dogs.get(each.dogId()), each))
			.toList();
		model.addAttribute("concerns", concerns);
		model.addAttribute("silent", silent);
		model.addAttribute("steady", dogs.size() - concerns.size());
		model.addAttribute("deadLetters", this.deadLetters.lines());
		model.addAttribute("answers", Answers.words(standings));
		model.addAttribute("day", Wording.day(today(dogs)));
		return "clinic/today";
	}

	/** The clinic's day is that of the dogs; without any, the day of the meridian. */
	private LocalDate today(Map<UUID, Dog> dogs) {
		return this.clock.instant()
			.atZone(dogs.values().stream().findFirst().map((dog) -> dog.household().timeZone()).orElse(ZoneOffset.UTC))
			.toLocalDate();
	}

	private static boolean silent(DogStanding standing, Dog dog, Instant since) {
		Instant heard = standing.lastHeardAt();
		return (heard != null) ? heard.isBefore(since) : dog.enrolledAt().isBefore(since);
	}

	/** Gives the alerts when they are not those that the page has seen. */
	@GetMapping("/clinic/alerts")
	Object alerts(@RequestParam(defaultValue = "") String seen, Model model) {
		String mark = this.board.show(model);
		return mark.equals(seen) ? ResponseEntity.noContent().build() : "clinic/today :: alerts";
	}

	@PostMapping("/clinic/alerts/{id}")
	String act(@PathVariable UUID id, @RequestParam String act, @RequestParam(defaultValue = "") String note,
			Principal staff, RedirectAttributes next) {
		String shortNote = (note.length() <= LONGEST_NOTE) ? note : note.substring(0, LONGEST_NOTE);
		boolean closes = act.equals("close");
		Optional<Alert> alert = closes ? this.alerts.close(id, staff.getName(), shortNote)
				: this.alerts.acknowledge(id, staff.getName(), shortNote);
		if (alert.isEmpty()) {
			throw new NoSuchThing("alert");
		}
		this.record.add(staff.getName(), closes ? "closed an alert" : "acknowledged an alert", id.toString());
		next.addFlashAttribute("done", closes ? "The alert is closed." : "The alert is acknowledged.");
		return "redirect:/clinic";
	}

}

package measuredwalk.clinic.pages;

import java.security.Principal;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.UUID;
import java.util.stream.Collectors;

import measuredwalk.clinic.DogMark;
import measuredwalk.clinic.access.AccessRecord;
import measuredwalk.clinic.access.Recorded;
import measuredwalk.escalation.Alerts;
import measuredwalk.household.ChangedSince;
import measuredwalk.household.Dog;
import measuredwalk.household.Households;
import measuredwalk.household.Refused;
import measuredwalk.journal.Journal;
import measuredwalk.journal.Notes;
import measuredwalk.messaging.Chats;
import measuredwalk.pictures.Picture;
import measuredwalk.signs.LoadKind;
import measuredwalk.suggestions.Suggestions;
import measuredwalk.tolerance.Calibration;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestHeader;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** One dog: its course, its journal and its plan. */
@Controller
class DogPage {

	private static final List<SpanLink> SPANS = List.of(new SpanLink(42, "6 weeks"), new SpanLink(182, "half a year"));

	/** So many days of the journal are open at once; the rest is folded away. */
	private static final int OPEN_DAYS = 7;

	/** Pixels of the picture on a wide screen, and on a phone of 390 pixels. */
	private static final int WIDE = 760;

	private static final int NARROW = 356;

	private final Households households;

	private final Journal journal;

	private final Notes notes;

	private final Suggestions suggestions;

	private final Alerts alerts;

	private final Course course;

	private final PlanChanges planChanges;

	private final Chats chats;

	private final AccessRecord record;

	private final Clock clock;

	DogPage(Households households, Journal journal, Notes notes, Suggestions suggestions, Alerts alerts, Course course,
			PlanChanges planChanges, Chats chats, AccessRecord record, Clock clock) {
		this.households = households;
		this.journal = journal;
		this.notes = notes;
		this.suggestions = suggestions;
		this.alerts = alerts;
		this.course = course;
		this.planChanges = planChanges;
		this.chats = chats;
		this.record = record;
		this.clock = clock;
	}

	/**
	 * A span of days to choose; public for the templates only.
	 *
	 * @param days how many
	 * @param words the same in words
	 */
	public record SpanLink(int days, String words) {
	}

	@GetMapping("/clinic/dogs/{id}")
	@Recorded("saw a dog's page")
	String page(@PathVariable UUID id, @RequestParam(defaultValue = "42") int days, Model model) {
		Dog dog = dog(id);
		int shown = Math.min(Math.max(7, days), 366);
		LocalDate today = this.clock.instant().atZone(dog.household().timeZone()).toLocalDate();
		List<CourseDay> course = this.course.lastDays(dog, today, shown);
		model.addAttribute("dog", DogHead.of(dog, this.suggestions.today(dog), recentLoads(course)));
		model.addAttribute("days", shown);
		model.addAttribute("spans", SPANS);
		Picture wide = CoursePicture.of(dog.name(), course, WIDE);
		model.addAttribute("timeline", wide.svg());
		model.addAttribute("timelineNarrow", CoursePicture.of(dog.name(), course, NARROW).svg());
		model.addAttribute("timelineInWords", wide.summary());
		Calibration calibration = this.suggestions.calibration(dog);
		model.addAttribute("calibration", calibration.isEnough() ? CalibrationLine.of(calibration) : List.of());
		model.addAttribute("calibrationWalks", calibration.walks());
		model.addAttribute("rows", CourseRow.newestFirst(course));
		model.addAttribute("alerts",
				this.alerts.of(id).stream().limit(10).map((alert) -> AlertLine.of(alert, dog, null)).toList());
		List<JournalDay> journal = JournalDay.of(this.journal.walks(id), this.journal.mornings(id), this.notes.of(id),
				today.minusDays(shown), dog.household().timeZone());
		model.addAttribute("journal", journal.stream().limit(OPEN_DAYS).toList());
		model.addAttribute("earlier", journal.stream().skip(OPEN_DAYS).toList());
		if (!model.containsAttribute("plan")) {
			model.addAttribute("plan", PlanForm.of(dog));
		}
		return "clinic/dog";
	}

	/** The loads that the reasons speak of: those of today and the three days before. */
	private static Set<LoadKind> recentLoads(List<CourseDay> course) {
		return course.subList(Math.max(0, course.size() - 4), course.size())
			.stream()
			.flatMap((day) -> day.walks().stream())
			.flatMap((walk) -> walk.loads().stream())
			.collect(Collectors.toCollection(TreeSet::new));
	}

	/** Shows what a plan would do, in place or, without script, on the whole page. */
	@PostMapping("/clinic/dogs/{id}/plan/preview")
	String preview(@PathVariable UUID id, PlanForm plan,
			@RequestHeader(name = "HX-Request", defaultValue = "false") boolean inPlace, Model model) {
		model.addAttribute("preview", this.planChanges.preview(dog(id), plan));
		if (inPlace) {
			return "clinic/dog :: preview";
		}
		model.addAttribute("plan", plan);
		return page(id, SPANS.get(0).days(), model);
	}

	@PostMapping("/clinic/dogs/{id}/plan")
	String save(@PathVariable UUID id, PlanForm plan, @RequestParam String mark, Principal staff,
			RedirectAttributes next) {
		Dog before = dog(id);
		try {
			this.households
				.changeAsSeen(id, (now) -> DogMark.of(now).equals(mark), plan.change(before), staff.getName())
				.ifPresent((after) -> this.planChanges.saved(before, after, staff.getName()));
			next.addFlashAttribute("done", "The plan is saved, and the household has been told.");
		}
		catch (Refused | ChangedSince ex) {
			next.addFlashAttribute("problem", ex.getMessage());
			next.addFlashAttribute("plan", plan);
		}
		return "redirect:/clinic/dogs/" + id;
	}

	@PostMapping("/clinic/dogs/{id}/erase")
	String erase(@PathVariable UUID id, @RequestParam String sure, Principal staff, RedirectAttributes next) {
		Dog dog = dog(id);
		if (!sure.strip().equalsIgnoreCase(dog.name())) {
			next.addFlashAttribute("problem", "The name does not match, so nothing was erased.");
			return "redirect:/clinic/dogs/" + id;
		}
		this.households.erase(id).ifPresent(this.chats::forget);
		this.record.add(staff.getName(), "erased a dog", id.toString());
		next.addFlashAttribute("done", "All that was held of " + dog.name() + " is erased.");
		return "redirect:/clinic";
	}

	private Dog dog(UUID id) {
		return this.households.dog(id).orElseThrow(() -> new NoSuchThing("dog"));
	}

}

package measuredwalk.clinic.pages;

import java.security.Principal;
import java.util.List;
import java.util.UUID;

import measuredwalk.clinic.access.AccessRecord;
import measuredwalk.clinic.caseload.Caseload;
import measuredwalk.diary.Diary;
import measuredwalk.diary.DiaryLine;
import measuredwalk.diary.DiaryProblem;
import measuredwalk.household.Dog;
import measuredwalk.household.Households;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** Brings a paper diary into a dog's journal, after a look at what was read from it. */
@Controller
class DiaryPage {

	private static final String PAGE = "clinic/diary";

	private final Households households;

	private final Diary diary;

	private final Caseload caseload;

	private final AccessRecord record;

	DiaryPage(Households households, Diary diary, Caseload caseload, AccessRecord record) {
		this.households = households;
		this.diary = diary;
		this.caseload = caseload;
		this.record = record;
	}

	/**
	 * A row on the page; public for the templates only.
	 *
	 * @param number its place among the rows
	 * @param date the day as it was written
	 * @param said the words as they were written
	 * @param read what was read, as the journal would show it
	 * @param standing what becomes of it
	 * @param remark why, or what to look at
	 */
	public record Row(int number, String date, String said, List<String> read, String standing, String remark) {

		static Row of(DiaryLine line) {
			List<String> read = new java.util.ArrayList<>(line.walks().stream().map(Wording::walk).toList());
			if (line.morning() != null) {
				read.add(Wording.morning(line.morning()));
			}
			String standing = switch (line.standing()) {
				case READ -> "will be stored";
				case KNOWN -> "known already";
				case NOT_READ -> "left out";
			};
			return new Row(line.number(), line.date(), line.said(), read, standing, line.remark());
		}

	}

	@GetMapping("/clinic/dogs/{id}/diary")
	String form(@PathVariable UUID id, Model model) {
		model.addAttribute("dog", dog(id));
		return PAGE;
	}

	@PostMapping("/clinic/dogs/{id}/diary/preview")
	String preview(@PathVariable UUID id, @RequestParam String text, Model model) {
		Dog dog = dog(id);
		model.addAttribute("dog", dog);
		model.addAttribute("text", text);
		try {
			List<DiaryLine> lines = this.diary.read(dog, text);
			model.addAttribute("rows", lines.stream().map(Row::of).toList());
			model.addAttribute("stored",
					lines.stream().filter((line) -> line.standing() == DiaryLine.Standing.READ).count());
		}
		catch (DiaryProblem problem) {
			model.addAttribute("problem", problem.getMessage());
		}
		return PAGE;
	}

	@PostMapping("/clinic/dogs/{id}/diary")
	String store(@PathVariable UUID id, @RequestParam String text, Principal staff, Model model,
			RedirectAttributes next) {
		Dog dog = dog(id);
		try {
			int stored = this.diary.store(dog, text, staff.getName());
			this.record.add(staff.getName(), "brought in a paper diary of " + stored + " rows", id.toString());
			this.caseload.lookAt(id);
			next.addFlashAttribute("done", stored + " rows of the diary were stored.");
			return "redirect:/clinic/dogs/" + id;
		}
		catch (DiaryProblem problem) {
			return preview(id, text, model);
		}
	}

	private Dog dog(UUID id) {
		return this.households.dog(id).orElseThrow(() -> new NoSuchThing("dog"));
	}

}

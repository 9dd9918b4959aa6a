package measuredwalk.clinic.pages;

import java.security.Principal;
import java.util.Comparator;

import measuredwalk.clinic.access.AccessRecord;
import measuredwalk.clinic.caseload.Caseload;
import measuredwalk.household.Dog;
import measuredwalk.household.Enrolment;
import measuredwalk.household.Households;
import measuredwalk.conversations.Tongues;
import measuredwalk.speech.Speech;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** Takes on a dog and ends in a code for its people. */
@Controller
class NewPatientPage {

	private static final String FIRST_ZONE = "Europe/London";

	private final Households households;

	private final Caseload caseload;

	private final AccessRecord record;

	private final Tongues tongues;

	NewPatientPage(Households households, Tongues tongues, Caseload caseload, AccessRecord record) {
		this.households = households;
		this.tongues = tongues;
		this.caseload = caseload;
		this.record = record;
	}

	@GetMapping("/clinic/dogs/new")
	String form(Model model) {
		model.addAttribute("form", NewPatientForm.empty(lastZone()));
		choices(model, Speech.usual().tag());
		return "clinic/new";
	}

	private void choices(Model model, String language) {
		model.addAttribute("kinds", MedicineKind.TO_TICK);
		model.addAttribute("languages", this.tongues.all());
		model.addAttribute("language", language);
	}

	/** Most patients of a clinic live in one zone: that of the last one taken on. */
	private String lastZone() {
		return this.households.dogs()
			.stream()
			.max(Comparator.comparing(Dog::enrolledAt))
			.map((dog) -> dog.household().timeZone().getId())
			.orElse(FIRST_ZONE);
	}

	@PostMapping("/clinic/dogs")
	String enrol(NewPatientForm form, @RequestParam(defaultValue = "en-GB") String language, Principal staff,
			Model model, RedirectAttributes next) {
		try {
			Enrolment enrolment = this.households.enrol(form.newDog(), staff.getName());
			this.tongues.of(language)
				.ifPresent((tongue) -> this.households.speak(enrolment.dog().household().id(), tongue.speech()));
			this.record.add(staff.getName(), "took on a dog", enrolment.dog().id().toString());
			this.caseload.lookAt(enrolment.dog().id());
			next.addFlashAttribute("code", enrolment.joinCode());
			return "redirect:/clinic/dogs/" + enrolment.dog().id() + "/code";
		}
		catch (IllegalArgumentException ex) {
			model.addAttribute("problem", ex.getMessage());
			model.addAttribute("form", form);
			choices(model, language);
			return "clinic/new";
		}
	}

}

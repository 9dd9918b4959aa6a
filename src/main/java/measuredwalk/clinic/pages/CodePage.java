package measuredwalk.clinic.pages;

import java.security.Principal;
import java.util.UUID;

import measuredwalk.telegram.JoinLinks;
import measuredwalk.clinic.access.AccessRecord;
import measuredwalk.household.Dog;
import measuredwalk.household.Households;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** A code by which one person joins a dog's household, to print or to show. */
@Controller
class CodePage {

	private static final int HALF = 5;

	private final Households households;

	private final JoinLinks links;

	private final AccessRecord record;

	CodePage(Households households, JoinLinks links, AccessRecord record) {
		this.households = households;
		this.links = links;
		this.record = record;
	}

	@GetMapping("/clinic/dogs/{id}/code")
	String show(@PathVariable UUID id, Model model) {
		Dog dog = dog(id);
		model.addAttribute("id", id);
		model.addAttribute("dog", dog.name());
		if (model.getAttribute("code") instanceof String code) {
			model.addAttribute("plainCode", code);
			model.addAttribute("code", code.substring(0, HALF) + " " + code.substring(HALF));
			this.links.to(code).ifPresent((link) -> {
				model.addAttribute("link", link);
				model.addAttribute("qr", QrSquare.of(link));
			});
		}
		return "clinic/code";
	}

	@PostMapping("/clinic/dogs/{id}/code")
	String make(@PathVariable UUID id, Principal staff, RedirectAttributes next) {
		Dog dog = dog(id);
		next.addFlashAttribute("code", this.households.shareCode(dog.household().id(), staff.getName()));
		this.record.add(staff.getName(), "made a code for a household", id.toString());
		return "redirect:/clinic/dogs/" + id + "/code";
	}

	private Dog dog(UUID id) {
		return this.households.dog(id).orElseThrow(() -> new NoSuchThing("dog"));
	}

}

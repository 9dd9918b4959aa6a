package measuredwalk.clinic.pages;

import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;

/** The clinical rules, for everybody on the staff to read. */
@Controller
class RulesPage {

	private final Rules rules;

	RulesPage(Rules rules) {
		this.rules = rules;
	}

	@GetMapping("/clinic/rules")
	String show(Model model) {
		model.addAttribute("sections", this.rules.all());
		this.rules.past().ifPresent((words) -> model.addAttribute("past", words));
		return "clinic/rules";
	}

}

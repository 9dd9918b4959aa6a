package measuredwalk.clinic.access;

import java.security.Principal;

import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** The form by which staff log in. */
@Controller
class LoginPage {

	static final String PATH = "/clinic/login";

	@GetMapping(PATH)
	String form(@RequestParam(required = false) @Nullable String problem, @Nullable Principal staff, Model model) {
		if (staff != null) {
			return "redirect:/clinic";
		}
		model.addAttribute("problem", words(problem));
		return "clinic/login";
	}

	private static @Nullable String words(@Nullable String problem) {
		if (problem == null) {
			return null;
		}
		return switch (problem) {
			case "pause" -> new TooManyTries().getMessage();
			case "out" -> "You are logged out.";
			default -> "The name or the password is wrong.";
		};
	}

}

package measuredwalk.clinic.pages;

import java.security.Principal;
import java.util.Arrays;
import java.util.regex.Pattern;

import measuredwalk.clinic.access.AccessRecord;
import measuredwalk.suggestions.DosingRules;
import measuredwalk.tolerance.DosingSetting;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** Changes a number of the dosing rule. */
@Controller
class DosingRuleForm {

	/** Plain decimals, with a point or a comma: not all that Java reads as a number. */
	private static final Pattern NUMBER = Pattern.compile("-?\\d{1,6}([.,]\\d{1,4})?");

	private static final int LONGEST_SHOWN = 20;

	private final DosingRules rules;

	private final DosingWords words;

	private final AccessRecord record;

	DosingRuleForm(DosingRules rules, DosingWords words, AccessRecord record) {
		this.rules = rules;
		this.words = words;
		this.record = record;
	}

	@PostMapping("/clinic/settings/dosing")
	String set(@RequestParam String setting, @RequestParam String amount,
			@RequestParam(defaultValue = "false") boolean back, Principal staff, RedirectAttributes next) {
		DosingSetting which = Arrays.stream(DosingSetting.values())
			.filter((each) -> each.code().equals(setting))
			.findFirst()
			.orElseThrow(() -> new NoSuchThing("setting"));
		String typed = amount.strip();
		next.addFlashAttribute("at", which.code());
		if (back || readable(which, typed)) {
			double value = back ? which.standard() : number(typed);
			change(which, value, staff.getName());
			next.addFlashAttribute("done", this.words.name(which)
					+ (back ? " is back at its default." : " is saved. It counts from the next suggestion on."));
		}
		else {
			String shown = (typed.length() > LONGEST_SHOWN) ? typed.substring(0, LONGEST_SHOWN) : typed;
			next.addFlashAttribute("typed", shown);
			next.addFlashAttribute("problem", this.words.name(which) + " was not saved: write "
					+ DosingWords.range(which) + (shown.isEmpty() ? "." : ", not '" + shown + "'."));
		}
		return "redirect:/clinic/settings#" + which.code();
	}

	private void change(DosingSetting which, double value, String staff) {
		double before = this.rules.current().value(which);
		this.rules.set(which, value, staff);
		this.record.add(staff, "changed the dosing rule",
				which.code() + ": " + DosingWords.figure(before) + " to " + DosingWords.amount(which, value));
	}

	private static boolean readable(DosingSetting which, String typed) {
		return NUMBER.matcher(typed).matches() && which.allows(number(typed));
	}

	private static double number(String typed) {
		return Double.parseDouble(typed.replace(',', '.'));
	}

}

package measuredwalk.clinic.pages;

import java.security.Principal;
import java.util.Arrays;
import java.util.List;

import measuredwalk.clinic.access.AccessRecord;
import measuredwalk.escalation.ClinicSetting;
import measuredwalk.escalation.ClinicSettings;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/**
 * What the clinic can set for itself, each with its default and where that comes from.
 */
@Controller
class SettingsPage {

	private final ClinicSettings settings;

	private final AccessRecord record;

	private final DosingSections dosing;

	private final DosingWords words;

	private final Rules rules;

	SettingsPage(ClinicSettings settings, DosingSections dosing, DosingWords words, Rules rules, AccessRecord record) {
		this.words = words;
		this.rules = rules;
		this.settings = settings;
		this.dosing = dosing;
		this.record = record;
	}

	@GetMapping("/clinic/settings")
	String show(Model model) {
		model.addAttribute("settings",
				Arrays.stream(ClinicSetting.values())
					.filter((each) -> each != ClinicSetting.REVIEW_DESIGN)
					.map((each) -> SettingLine.of(each, this.settings))
					.toList());
		model.addAttribute("review", SettingLine.of(ClinicSetting.REVIEW_DESIGN, this.settings));
		model.addAttribute("designs", DesignLine.all(this.settings.reviewDesign(), this.words));
		this.rules.past().ifPresent((sentence) -> model.addAttribute("past", sentence));
		List<DosingSection> sections = this.dosing.all();
		model.addAttribute("sections", sections);
		model.addAttribute("changed",
				sections.stream().flatMap((each) -> each.lines().stream()).filter(DosingLine::changed).toList());
		return "clinic/settings";
	}

	@PostMapping("/clinic/settings")
	String set(@RequestParam ClinicSetting setting, @RequestParam String text,
			@RequestParam(defaultValue = "false") boolean back, Principal staff, RedirectAttributes next) {
		try {
			String before = this.settings.text(setting);
			this.settings.set(setting, back ? null : text.strip(), staff.getName());
			String change = (setting == ClinicSetting.REVIEW_DESIGN)
					? ": " + before + " to " + this.settings.text(setting) : "";
			this.record.add(staff.getName(), "changed a setting", setting.shown() + change);
			next.addFlashAttribute("done", setting.shown() + (back ? " is back at its default." : " is saved."));
		}
		catch (IllegalArgumentException ex) {
			next.addFlashAttribute("problem", ex.getMessage());
		}
		return "redirect:/clinic/settings";
	}

}

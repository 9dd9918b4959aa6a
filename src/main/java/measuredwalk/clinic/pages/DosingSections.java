package measuredwalk.clinic.pages;

import java.time.ZoneId;
import java.util.Arrays;
import java.util.List;
import java.util.Map;

import measuredwalk.escalation.ClinicSettings;
import measuredwalk.suggestions.ChosenAmount;
import measuredwalk.suggestions.DosingRules;
import measuredwalk.tolerance.DosingGroup;
import measuredwalk.tolerance.DosingSetting;
import org.springframework.stereotype.Component;

/** The dosing rule as the settings page shows it. */
@Component
class DosingSections {

	private final DosingRules rules;

	private final ClinicSettings settings;

	private final DosingWords words;

	private final Rules checked;

	DosingSections(DosingRules rules, ClinicSettings settings, DosingWords words, Rules checked) {
		this.checked = checked;
		this.rules = rules;
		this.settings = settings;
		this.words = words;
	}

	/** All groups. */
	List<DosingSection> all() {
		Map<DosingSetting, ChosenAmount> chosen = this.rules.chosen();
		ZoneId zone = this.settings.zone();
		return Arrays.stream(DosingGroup.values()).map((group) -> section(group, chosen, zone)).toList();
	}

	private DosingSection section(DosingGroup group, Map<DosingSetting, ChosenAmount> chosen, ZoneId zone) {
		return new DosingSection(group.code(), this.words.name(group), this.words.about(group), Arrays
			.stream(DosingSetting.values())
			.filter((setting) -> setting.group() == group)
			.map((setting) -> DosingLine.of(setting, chosen.get(setting), this.words, zone, this.checked.today()))
			.toList());
	}

}

package measuredwalk.clinic.pages;

import java.time.LocalDate;
import java.time.ZoneId;

import measuredwalk.suggestions.ChosenAmount;
import measuredwalk.tolerance.DosingSetting;
import org.jspecify.annotations.Nullable;

/**
 * A number of the dosing rule on a page; public for the templates only.
 *
 * @param code its name in the form and in the address of its place
 * @param name its name on the page
 * @param about what it does
 * @param amount what counts now
 * @param unit what it is counted in
 * @param range what may be set, in words
 * @param fallback the default, its grade and source, and when these were checked, in
 * words
 * @param changed whether the clinic has set it
 * @param setBy who set it and when, or null at the default
 */
public record DosingLine(String code, String name, String about, String amount, String unit, String range,
		String fallback, boolean changed, @Nullable String setBy) {

	static DosingLine of(DosingSetting setting, @Nullable ChosenAmount chosen, DosingWords words, ZoneId zone,
			LocalDate today) {
		double amount = (chosen != null) ? chosen.amount() : setting.standard();
		String by = (chosen != null) ? "Set by " + chosen.by() + ", " + Wording.moment(chosen.at(), zone) + "." : null;
		return new DosingLine(setting.code(), words.name(setting), words.about(setting), DosingWords.figure(amount),
				setting.unit(), "May be " + DosingWords.range(setting) + ".",
				"Default: " + DosingWords.figure(setting.standard()) + ". Grade " + setting.basis().grade() + ": "
						+ setting.basis().source() + ". " + RuleLine.checked(setting.basis(), today),
				chosen != null, by);
	}

}

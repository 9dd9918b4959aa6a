package measuredwalk.clinic.pages;

import measuredwalk.escalation.ClinicSetting;
import measuredwalk.escalation.ClinicSettings;

/**
 * A setting on a page; public for the templates only.
 *
 * @param name its name in the form
 * @param shown its name on the page
 * @param meaning what it does
 * @param text what counts now
 * @param fallback what counts by default, in words
 * @param changed whether the clinic has set it
 */
public record SettingLine(String name, String shown, String meaning, String text, String fallback, boolean changed) {

	static SettingLine of(ClinicSetting setting, ClinicSettings settings) {
		String byDefault = settings.byDefault(setting);
		String text = settings.text(setting);
		return new SettingLine(setting.name(), setting.shown(), setting.meaning(), text,
				"Default: " + (byDefault.isEmpty() ? "empty" : byDefault) + " (" + setting.source() + ").",
				!text.equals(byDefault));
	}

}

package measuredwalk.clinic.pages;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Locale;
import java.util.Objects;
import java.util.Properties;
import java.util.stream.Stream;

import measuredwalk.signs.Coded;
import measuredwalk.tolerance.DosingGroup;
import measuredwalk.tolerance.DosingSetting;
import org.springframework.core.io.ClassPathResource;
import org.springframework.core.io.support.EncodedResource;
import org.springframework.core.io.support.PropertiesLoaderUtils;
import org.springframework.stereotype.Component;

/** The numbers of the dosing rule in words. */
@Component
class DosingWords {

	private static final String FILE = "measuredwalk/clinic/dosing-settings.properties";

	private final Properties words;

	DosingWords() {
		try {
			this.words = PropertiesLoaderUtils
				.loadProperties(new EncodedResource(new ClassPathResource(FILE), "UTF-8"));
		}
		catch (IOException ex) {
			throw new UncheckedIOException("The file " + FILE + " cannot be read.", ex);
		}
		Stream.<Coded>concat(Stream.of(DosingGroup.values()), Stream.of(DosingSetting.values())).forEach(this::about);
	}

	String name(Coded word) {
		return said(word.code());
	}

	String about(Coded word) {
		name(word);
		return said(word.code() + ".about");
	}

	private String said(String key) {
		return Objects.requireNonNull(this.words.getProperty(key), () -> FILE + " must have the words '" + key + "'");
	}

	/** What may be set, such as 'a whole number from 0 to 3 days'. */
	static String range(DosingSetting setting) {
		return (setting.isWhole() ? "a whole number" : "a number") + " from " + figure(setting.least()) + " to "
				+ figure(setting.most()) + unit(setting);
	}

	/** A figure with its unit, where the unit is one that is counted. */
	static String amount(DosingSetting setting, double amount) {
		return figure(amount) + unit(setting);
	}

	private static String unit(DosingSetting setting) {
		return switch (setting.unit()) {
			case "chance", "share", "factor" -> " (a " + setting.unit() + ")";
			default -> " " + setting.unit();
		};
	}

	static String figure(double amount) {
		return (amount == Math.rint(amount)) ? String.valueOf((long) amount)
				: String.format(Locale.ROOT, "%.4f", amount).replaceAll("0+$", "");
	}

}

package measuredwalk.prompts;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.Objects;
import java.util.UUID;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.jspecify.annotations.Nullable;

/**
 * One occasion to ask. Its name is unique, so that it comes once, whoever expects it.
 *
 * @param dogId the dog
 * @param date the day, in the household's zone
 * @param hour the usual walk hour that it is about, or null
 * @param putOff how often it was put off
 */
record Occasion(UUID dogId, LocalDate date, @Nullable LocalTime hour, int putOff) {

	private static final Pattern NAME = Pattern
		.compile("([0-9a-f-]{36}):(\\d{4}-\\d\\d-\\d\\d)(?:@(\\d\\d:\\d\\d))?(?:/(\\d+))?");

	static Occasion of(UUID dogId, LocalDate date) {
		return new Occasion(dogId, date, null, 0);
	}

	static Occasion named(String name) {
		Matcher parts = NAME.matcher(name);
		if (!parts.matches()) {
			throw new IllegalArgumentException("'" + name + "' is no name of an occasion.");
		}
		LocalTime hour = (parts.group(3) != null) ? LocalTime.parse(parts.group(3)) : null;
		int putOff = (parts.group(4) != null) ? Integer.parseInt(parts.group(4)) : 0;
		return new Occasion(UUID.fromString(parts.group(1)), LocalDate.parse(parts.group(2)), hour, putOff);
	}

	String name() {
		return this.dogId + ":" + this.date + ((this.hour != null) ? "@" + this.hour : "")
				+ ((this.putOff > 0) ? "/" + this.putOff : "");
	}

	LocalTime walkHour() {
		return Objects.requireNonNull(this.hour);
	}

	Occasion later() {
		return new Occasion(this.dogId, this.date, this.hour, this.putOff + 1);
	}

}

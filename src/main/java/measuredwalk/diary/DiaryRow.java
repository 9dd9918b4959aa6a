package measuredwalk.diary;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeFormatterBuilder;
import java.time.format.ResolverStyle;
import java.util.List;
import java.util.Map;

import measuredwalk.reading.Question;
import measuredwalk.signs.Coded;
import org.jspecify.annotations.Nullable;

/**
 * One row of a diary, not yet understood.
 *
 * @param number its place among the rows, from 1
 * @param fields its fields by name; an empty one is left out
 */
record DiaryRow(int number, Map<String, String> fields) {

	static final List<String> FIELDS = List.of("date", "time", "about", "minutes", "said");

	/** A diary with a day first, as people write it outside America, or as ISO 8601. */
	private static final List<DateTimeFormatter> DATES = List.of(DateTimeFormatter.ISO_LOCAL_DATE,
			DateTimeFormatter.ofPattern("d/M/uuuu").withResolverStyle(ResolverStyle.STRICT),
			DateTimeFormatter.ofPattern("d.M.uuuu").withResolverStyle(ResolverStyle.STRICT));

	private static final DateTimeFormatter TIME = new DateTimeFormatterBuilder().appendPattern("H:mm[:ss]")
		.toFormatter();

	private static final double LONGEST_WALK_MINUTES = 600;

	DiaryRow {
		fields = Map.copyOf(fields);
	}

	LocalDate date() {
		String text = this.fields.get("date");
		if (text == null) {
			throw new DiaryProblem("The date is missing.");
		}
		for (DateTimeFormatter format : DATES) {
			try {
				return LocalDate.parse(text, format);
			}
			catch (DateTimeException ex) {
				// The next format may fit.
			}
		}
		throw new DiaryProblem("'" + text + "' is no date. Write 2026-03-14, or 14/3/2026 with the day first.");
	}

	@Nullable LocalTime time() {
		String text = this.fields.get("time");
		try {
			return (text != null) ? LocalTime.parse(text, TIME) : null;
		}
		catch (DateTimeException ex) {
			throw new DiaryProblem("'" + text + "' is no time. Write 17:30.");
		}
	}

	Question about() {
		String text = this.fields.getOrDefault("about", "walk");
		try {
			return Coded.of(Question.class, text);
		}
		catch (IllegalArgumentException ex) {
			throw new DiaryProblem("'" + text + "' is not one of walk, morning.");
		}
	}

	@Nullable Double minutes() {
		String text = this.fields.get("minutes");
		if (text == null) {
			return null;
		}
		try {
			double minutes = Double.parseDouble(text.replace(',', '.'));
			if (minutes > 0 && minutes <= LONGEST_WALK_MINUTES) {
				return minutes;
			}
		}
		catch (NumberFormatException ex) {
			// Said below, as for a number that is out of range.
		}
		throw new DiaryProblem("'" + text + "' is no number of minutes between 1 and 600.");
	}

	String said() {
		return this.fields.getOrDefault("said", "");
	}

}

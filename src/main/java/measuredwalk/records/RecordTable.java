package measuredwalk.records;

import java.time.LocalDate;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

import measuredwalk.files.CsvTable;
import measuredwalk.household.Dog;
import measuredwalk.household.Households;
import measuredwalk.household.Medication;
import measuredwalk.journal.Journal;
import measuredwalk.journal.MorningEntry;
import measuredwalk.journal.Note;
import measuredwalk.journal.Notes;
import measuredwalk.journal.Said;
import measuredwalk.journal.WalkEntry;
import measuredwalk.signs.Overall;
import measuredwalk.signs.Sign;
import measuredwalk.suggestions.DogDay;
import measuredwalk.suggestions.DogDays;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

/** All that counts in a dog's record as a table, a thing told or suggested a row. */
@Component
class RecordTable {

	private final Households households;

	private final Journal journal;

	private final Notes notes;

	private final DogDays days;

	private final RecordWords words;

	RecordTable(Households households, Journal journal, Notes notes, DogDays days, RecordWords words) {
		this.households = households;
		this.journal = journal;
		this.notes = notes;
		this.days = days;
		this.words = words;
	}

	private record Row(LocalDate date, List<String> cells) {
	}

	String csv(Dog dog, LocalDate today) {
		ZoneId zone = dog.household().timeZone();
		List<Row> rows = new ArrayList<>();
		this.households.medicationsOf(dog.id()).forEach((each) -> medicine(each, rows));
		this.days.of(dog, LocalDate.EPOCH, today).forEach((day) -> rows.add(suggestion(day)));
		this.journal.mornings(dog.id()).forEach((each) -> rows.add(morning(each, zone)));
		this.journal.walks(dog.id()).forEach((each) -> rows.add(walk(each, zone)));
		this.notes.of(dog.id()).forEach((each) -> rows.add(note(each, zone)));
		rows.sort(Comparator.comparing(Row::date));
		return CsvTable.of(List.of(words("head").split(",", -1)), rows.stream().map(Row::cells).toList());
	}

	private static void medicine(Medication medicine, List<Row> rows) {
		rows.add(row(medicine.startedOn(), words(medicine.knownAtEnrolment() ? "medicine-given" : "medicine-started"),
				RecordTexts.medicine(medicine.kind())));
		LocalDate stopped = medicine.stoppedOn();
		if (stopped != null) {
			rows.add(row(stopped, words("medicine-stopped"), RecordTexts.medicine(medicine.kind())));
		}
	}

	private static Row row(LocalDate date, String about, String words) {
		return new Row(date, List.of(date.toString(), "", about, "", "", "", "", "", "", "", words, "", ""));
	}

	private static Row suggestion(DogDay day) {
		return new Row(day.date(),
				List.of(day.date().toString(), "", words("suggestion"), figure(day.suggestion().minutes()), "", "", "",
						"", "", String.valueOf(day.suggestion().walks()), "", "", ""));
	}

	private Row morning(MorningEntry entry, ZoneId zone) {
		var facts = entry.facts();
		return new Row(facts.date(),
				List.of(facts.date().toString(), "", words("morning"), "", "", "", figure(facts.stiffMinutes()),
						overall(facts.overall()), signs(facts.signs()), "", words(entry.said()),
						entry.reportedBy().name(), at(entry.said(), zone)));
	}

	private Row walk(WalkEntry entry, ZoneId zone) {
		var facts = entry.facts();
		return new Row(facts.date(),
				List.of(facts.date().toString(), (facts.start() != null) ? facts.start().toString() : "", words("walk"),
						figure(facts.minutes()), words(facts.minutesEstimated() ? "yes" : "no"),
						figure(facts.distanceMetres()), "", overall(facts.overall()), signs(facts.signs()), "",
						words(entry.said()), entry.reportedBy().name(), at(entry.said(), zone)));
	}

	private static Row note(Note note, ZoneId zone) {
		List<Said> said = List.of(note.said());
		return new Row(note.date(), List.of(note.date().toString(), "", words("note"), "", "", "", "", "", "", "",
				words(said), note.said().by(), at(said, zone)));
	}

	private String signs(List<Sign> signs) {
		return signs.stream().map(this.words::sign).collect(Collectors.joining("; "));
	}

	private static String words(String key) {
		return RecordTexts.of("table." + key);
	}

	private static String overall(@Nullable Overall overall) {
		return (overall != null) ? words("overall." + overall.code()) : "";
	}

	private static String words(List<Said> said) {
		return said.stream().map(Said::text).collect(Collectors.joining(" / "));
	}

	private static String at(List<Said> said, ZoneId zone) {
		return said.isEmpty() ? ""
				: said.get(0).at().atZone(zone).toLocalDateTime().truncatedTo(ChronoUnit.MINUTES).toString();
	}

	private static String figure(@Nullable Double figure) {
		return (figure != null) ? String.format(Locale.ROOT, "%.1f", figure).replace(".0", "") : "";
	}

}

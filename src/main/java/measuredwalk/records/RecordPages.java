package measuredwalk.records;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;

import measuredwalk.files.PaperSize;
import measuredwalk.files.PdfLayout;
import measuredwalk.household.Dog;
import measuredwalk.journal.Journal;
import measuredwalk.journal.Notes;
import measuredwalk.journal.Said;
import measuredwalk.pictures.Picture;
import measuredwalk.suggestions.DogDay;
import measuredwalk.suggestions.DogDays;
import measuredwalk.speech.Speaking;
import org.springframework.stereotype.Component;
import org.thymeleaf.ITemplateEngine;
import org.thymeleaf.context.Context;

/** A dog's record of the last weeks, to read and to print. */
@Component
class RecordPages {

	/** Twelve weeks: the table has all days, and pages should be read. */
	private static final int DAYS = 84;

	private static final String DAY = "EEE d MMM yyyy";

	private final Journal journal;

	private final Notes notes;

	private final DogDays days;

	private final FortnightPictures pictures;

	private final RecordWords words;

	private final ITemplateEngine templates;

	RecordPages(Journal journal, Notes notes, DogDays days, FortnightPictures pictures, RecordWords words,
			ITemplateEngine templates) {
		this.journal = journal;
		this.notes = notes;
		this.days = days;
		this.pictures = pictures;
		this.words = words;
		this.templates = templates;
	}

	byte[] pdf(Dog dog, LocalDate today, PaperSize paper) {
		List<DogDay> course = this.days.of(dog, today.minusDays(DAYS - 1), today);
		Picture picture = this.pictures.picture(dog, this.pictures.daysUntil(dog, today));
		Locale locale = Speaking.now().locale();
		RecordSheet sheet = new RecordSheet(locale.getLanguage(), RecordTexts.of("title", dog.name()),
				RecordTexts.of("period", day(course.get(0).date()), day(today)), plan(dog), picture.summary(),
				days(dog, course));
		String page = this.templates.process("records/record-print",
				new Context(locale, Map.of("sheet", sheet, "words", RecordTexts.all())));
		return PdfLayout.laidOut(page, picture, paper);
	}

	private static String day(LocalDate date) {
		return DateTimeFormatter.ofPattern(DAY, Speaking.now().locale()).format(date);
	}

	private static String plan(Dog dog) {
		String plan = RecordTexts.of("plan", dog.plan().walksPerDay(), Math.round(dog.plan().planMinutes()));
		return dog.medications().isEmpty() ? plan : plan + " " + RecordTexts.of("medicine",
				dog.medications().stream().map(RecordTexts::medicine).collect(Collectors.joining(", ")));
	}

	private static String suggested(DogDay day) {
		int walks = day.suggestion().walks();
		return (walks == 0) ? RecordTexts.of("rest")
				: RecordTexts.of("dose", walks, Math.round(day.suggestion().minutes()));
	}

	private List<RecordDay> days(Dog dog, List<DogDay> course) {
		DayLines lines = new DayLines();
		this.journal.mornings(dog.id())
			.forEach((each) -> lines.add(each.facts().date(), this.words.morning(each.facts(), each.facts().date()),
					each.said()));
		this.journal.walks(dog.id())
			.forEach((each) -> lines.add(each.facts().date(), this.words.walk(each.facts(), each.facts().date()),
					each.said()));
		this.notes.of(dog.id()).forEach((each) -> lines.add(each.date(), "", List.of(each.said())));
		List<RecordDay> days = new ArrayList<>();
		for (DogDay day : course) {
			List<RecordLine> told = lines.of(day.date());
			if (!told.isEmpty()) {
				days.add(new RecordDay(day(day.date()), suggested(day), told));
			}
		}
		Collections.reverse(days);
		return days;
	}

	/** What was told, by its day. */
	private static final class DayLines {

		private final Map<LocalDate, List<RecordLine>> lines = new java.util.HashMap<>();

		void add(LocalDate date, String text, List<Said> said) {
			this.lines.computeIfAbsent(date, (day) -> new ArrayList<>())
				.add(new RecordLine(text,
						said.stream().map((each) -> new RecordLine.Words(each.text(), each.by())).toList()));
		}

		List<RecordLine> of(LocalDate date) {
			return this.lines.getOrDefault(date, List.of());
		}

	}

}

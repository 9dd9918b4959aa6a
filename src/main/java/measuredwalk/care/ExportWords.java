package measuredwalk.care;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import measuredwalk.conversations.Part;
import measuredwalk.conversations.Phrase;
import measuredwalk.conversations.Replies;
import measuredwalk.household.Dog;
import measuredwalk.household.Households;
import measuredwalk.household.Medication;
import measuredwalk.journal.Journal;
import measuredwalk.journal.Note;
import measuredwalk.journal.Notes;
import measuredwalk.journal.Said;
import org.springframework.stereotype.Component;

/**
 * What counts in a dog's record, a fact a line, with the owners' own words. The clinic's
 * export holds the history and the messages as well.
 */
@Component
class ExportWords {

	private final Households households;

	private final Journal journal;

	private final Notes notes;

	private final EntryWords words;

	private final Replies replies;

	private final Figures figures;

	ExportWords(Households households, Journal journal, Notes notes, EntryWords words, Replies replies,
			Figures figures) {
		this.figures = figures;
		this.households = households;
		this.journal = journal;
		this.notes = notes;
		this.words = words;
		this.replies = replies;
	}

	String of(Dog dog) {
		List<String> lines = new ArrayList<>();
		lines.add(this.replies.say(Phrase.EXPORT, Map.of("dog", dog.name())));
		lines.add(this.replies.say(Phrase.PLAN,
				Map.of("dog", dog.name(), "walks", this.figures.walks(dog.plan().walksPerDay()), "minutes",
						this.figures.minutes(dog.plan().planMinutes()))));
		this.households.medicationsOf(dog.id()).stream().map(this::medicine).forEach(lines::add);
		Stream.of(mornings(dog), walks(dog), notes(dog))
			.flatMap((each) -> each)
			.sorted(Comparator.comparing(Line::date))
			.map((line) -> line.date() + " " + line.text())
			.forEach(lines::add);
		return String.join("\n", lines);
	}

	private String medicine(Medication medication) {
		String from = medication.startedOn().toString();
		String days = (medication.stoppedOn() != null)
				? this.replies.part(Part.UNTIL, from, medication.stoppedOn().toString()) : from;
		return days + " " + medication.kind();
	}

	private Stream<Line> mornings(Dog dog) {
		return this.journal.mornings(dog.id())
			.stream()
			.map((each) -> new Line(each.facts().date(),
					this.words.morning(each.facts(), each.facts().date()) + said(each.said())));
	}

	private Stream<Line> walks(Dog dog) {
		return this.journal.walks(dog.id())
			.stream()
			.map((each) -> new Line(each.facts().date(),
					this.words.walk(each.facts(), each.facts().date()) + said(each.said())));
	}

	private Stream<Line> notes(Dog dog) {
		return this.notes.of(dog.id()).stream().map((Note each) -> new Line(each.date(), said(List.of(each.said()))));
	}

	private static String said(List<Said> said) {
		return said.stream()
			.map((each) -> " " + each.by() + ": '" + each.text() + "'")
			.collect(Collectors.joining(";"));
	}

	private record Line(LocalDate date, String text) {

		Line {
			text = text.strip();
		}

	}

}

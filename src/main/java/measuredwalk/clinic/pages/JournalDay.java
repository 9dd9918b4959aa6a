package measuredwalk.clinic.pages;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

import measuredwalk.journal.MorningEntry;
import measuredwalk.journal.Note;
import measuredwalk.journal.WalkEntry;

/**
 * A day of the journal on a page; public for the templates only.
 *
 * @param day the day
 * @param entries what was told of it, the morning first
 */
public record JournalDay(String day, List<Entry> entries) {

	/**
	 * An entry on a page.
	 *
	 * @param facts what was read
	 * @param said the owner's words
	 */
	public record Entry(String facts, List<SaidLine> said) {
	}

	static List<JournalDay> of(List<WalkEntry> walks, List<MorningEntry> mornings, List<Note> notes, LocalDate from,
			ZoneId zone) {
		Map<LocalDate, List<Entry>> days = new TreeMap<>(Comparator.reverseOrder());
		mornings.forEach((entry) -> days.computeIfAbsent(entry.facts().date(), (day) -> new ArrayList<>())
			.add(new Entry(Wording.morning(entry.facts()), SaidLine.of(entry.said(), zone))));
		walks.forEach((entry) -> days.computeIfAbsent(entry.facts().date(), (day) -> new ArrayList<>())
			.add(new Entry(Wording.walk(entry.facts()), SaidLine.of(entry.said(), zone))));
		notes.forEach((note) -> days.computeIfAbsent(note.date(), (day) -> new ArrayList<>())
			.add(new Entry(Wording.note(note.topic()), SaidLine.of(List.of(note.said()), zone))));
		return days.entrySet()
			.stream()
			.filter((day) -> !day.getKey().isBefore(from))
			.map((day) -> new JournalDay(Wording.day(day.getKey()), day.getValue()))
			.toList();
	}

}

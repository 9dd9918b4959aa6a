package measuredwalk.care;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

import measuredwalk.conversations.Phrase;
import measuredwalk.conversations.Replies;
import measuredwalk.journal.Journal;
import org.springframework.stereotype.Component;

/** The last days of the journal, an entry a line, with who told of it. */
@Component
class LogWords {

	private static final int DAYS = 7;

	private final Journal journal;

	private final EntryWords words;

	private final Replies replies;

	LogWords(Journal journal, EntryWords words, Replies replies) {
		this.journal = journal;
		this.words = words;
		this.replies = replies;
	}

	String lastDays(Turn turn) {
		LocalDate today = turn.today();
		LocalDate first = today.minusDays(DAYS - 1);
		Stream<Line> walks = this.journal.walks(turn.dog().id())
			.stream()
			.map((walk) -> new Line(walk.facts().date(), 1,
					this.words.walk(walk.facts(), today) + " (" + walk.reportedBy().name() + ")"));
		Stream<Line> mornings = this.journal.mornings(turn.dog().id())
			.stream()
			.map((morning) -> new Line(morning.facts().date(), 0,
					this.words.morning(morning.facts(), today) + " (" + morning.reportedBy().name() + ")"));
		List<String> lines = Stream.concat(mornings, walks)
			.filter((line) -> !line.date().isBefore(first))
			.sorted(Comparator.comparing(Line::date).thenComparing(Line::order))
			.map((line) -> "- " + line.text())
			.toList();
		Map<String, String> places = Map.of("dog", turn.dog().name());
		if (lines.isEmpty()) {
			return this.replies.say(Phrase.LOG_EMPTY, places);
		}
		List<String> all = new ArrayList<>(List.of(this.replies.say(Phrase.LOG, places)));
		all.addAll(lines);
		return String.join("\n", all);
	}

	private record Line(LocalDate date, int order, String text) {
	}

}

package measuredwalk.reading.report;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

import measuredwalk.command.ReadQuantities;
import measuredwalk.reading.Answer;
import measuredwalk.reading.MessageReader;
import measuredwalk.reading.OutOfScope;
import measuredwalk.reading.OwnerMessage;
import measuredwalk.reading.QuantityComparison;
import measuredwalk.reading.Question;
import measuredwalk.reading.benchmark.DurationComparison;
import measuredwalk.reading.score.Tally;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * Public sets of amounts, times and answers. A line is right only when the whole list is;
 * a wrong line counts as missed where something was expected and as invented where
 * something was read.
 */
final class PublicTable {

	private static final LocalDateTime NOON = LocalDateTime.of(2026, 3, 14, 12, 0);

	private static final List<String> QUANTITIES = List.of("durations", "distances", "numbers", "number-ranges",
			"temperatures", "clock-times", "time-ranges");

	private final ReadQuantities tool = new ReadQuantities();

	private final Set<String> outOfScope = OutOfScope.ids();

	private final MessageReader reader;

	PublicTable(MessageReader reader) {
		this.reader = reader;
	}

	List<String> lines() {
		List<String> columns = new ArrayList<>(List.of("set", "lines", "right", "in scope", "right in scope"));
		columns.addAll(List.of("missed", "invented", "precision", "recall", "F1"));
		List<String> lines = new ArrayList<>(List.of(MarkdownTable.head(columns)));
		QUANTITIES.forEach((set) -> lines.add(row(set, PublicLines.of(set))));
		lines.add(row("yes-no", PublicLines.of("yes-no")));
		lines.add("");
		return lines;
	}

	/** Other readers on the durations in owners' range; ranges are asked of none. */
	static List<String> otherReaders() {
		List<String> lines = new ArrayList<>(
				List.of(MarkdownTable.head(List.of("durations in owners' range, by reader", "lines", "right"))));
		DurationComparison.right()
			.forEach((reader, right) -> lines.add(MarkdownTable.row(List.of(reader.title(),
					String.valueOf(DurationComparison.lines()), right + share(right, DurationComparison.lines())))));
		lines.add("");
		return lines;
	}

	private String row(String set, List<JsonNode> all) {
		Tally tally = new Tally();
		int right = 0;
		int inScope = 0;
		int rightInScope = 0;
		for (JsonNode line : all) {
			boolean isRight = count(line, tally);
			boolean counts = !this.outOfScope.contains(line.get("id").asString());
			right += isRight ? 1 : 0;
			inScope += counts ? 1 : 0;
			rightInScope += (isRight && counts) ? 1 : 0;
		}
		List<String> cells = new ArrayList<>(List.of(set, String.valueOf(all.size()), right + share(right, all.size()),
				String.valueOf(inScope), rightInScope + share(rightInScope, inScope)));
		cells.addAll(MarkdownTable.rates(tally).subList(2, MarkdownTable.RATES.size()));
		return MarkdownTable.row(cells);
	}

	private static String share(int right, int all) {
		return " (" + MarkdownTable.percent((double) right / all) + ")";
	}

	private boolean count(JsonNode line, Tally tally) {
		JsonNode expected = line.get("expected");
		if (expected.has("answers")) {
			return countAnswer(line, expected.get("answers").get(0).get("value").asBoolean(), tally);
		}
		String kind = expected.propertyNames().iterator().next();
		JsonNode answer = answer(line);
		List<JsonNode> wanted = expected.get(kind).valueStream().toList();
		boolean right = QuantityComparison.isRight(expected, answer);
		count(tally, right, !wanted.isEmpty(), !QuantityComparison.entries(kind, wanted, answer).isEmpty());
		return right;
	}

	private boolean countAnswer(JsonNode line, boolean yes, Tally tally) {
		Answer read = this.reader
			.read(new OwnerMessage(line.get("text").asString(), Question.ANY, NOON, null, Set.of()))
			.answer();
		boolean right = read == (yes ? Answer.YES : Answer.NO);
		count(tally, right, true, read != null);
		return right;
	}

	private static void count(Tally tally, boolean right, boolean wanted, boolean read) {
		if (right && wanted) {
			tally.right();
			return;
		}
		if (!right && wanted) {
			tally.missed();
		}
		if (!right && read) {
			tally.invented();
		}
	}

	private JsonNode answer(JsonNode line) {
		return JsonMapper.shared()
			.readTree(this.tool.answer(JsonMapper.shared()
				.createObjectNode()
				.put("id", line.get("id").asString())
				.put("text", line.get("text").asString())
				.put("now", NOON.toString())
				.toString()));
	}

}

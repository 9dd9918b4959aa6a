package measuredwalk.reading.report;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;

import measuredwalk.reading.MessageReader;
import measuredwalk.reading.context.Context;
import measuredwalk.reading.score.Tally;
import tools.jackson.databind.JsonNode;

/** Negation, history and experiencer on clinical sentences of a public set. */
final class NegationTable {

	private NegationTable() {
	}

	static List<String> lines(MessageReader reader) {
		List<JsonNode> all = PublicLines.of("negation-clinical");
		List<String> columns = new ArrayList<>(List.of("negation-clinical (" + all.size() + " lines)"));
		columns.addAll(MarkdownTable.RATES);
		List<String> lines = new ArrayList<>(List.of(MarkdownTable.head(columns)));
		lines.add(row("negated", reader, all, (label) -> label.get("negated").asBoolean(), Context::negated));
		lines.add(row("historical", reader, all, (label) -> label.get("temporality").asString().equals("historical"),
				Context::historical));
		lines.add(row("hypothetical", reader, all,
				(label) -> label.get("temporality").asString().equals("not particular"), Context::hypothetical));
		lines.add(row("of another person", reader, all, (label) -> label.get("experiencer").asString().equals("other"),
				Context::other));
		lines.add("");
		return lines;
	}

	private static String row(String name, MessageReader reader, List<JsonNode> all, Predicate<JsonNode> label,
			Predicate<Context> read) {
		Tally tally = new Tally();
		for (JsonNode line : all) {
			Context context = reader.context(line.get("text").asString(), line.get("start").asInt(),
					line.get("end").asInt());
			count(tally, label.test(line.get("expected")), read.test(context));
		}
		List<String> cells = new ArrayList<>(List.of(name));
		cells.addAll(MarkdownTable.rates(tally));
		return MarkdownTable.row(cells);
	}

	private static void count(Tally tally, boolean told, boolean read) {
		if (told && read) {
			tally.right();
		}
		else if (told) {
			tally.missed();
		}
		else if (read) {
			tally.invented();
		}
	}

}

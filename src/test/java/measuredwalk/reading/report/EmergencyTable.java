package measuredwalk.reading.report;

import java.util.ArrayList;
import java.util.List;

import measuredwalk.reading.MessageReader;
import measuredwalk.reading.score.Scorecard.Field;
import measuredwalk.reading.score.Tally;

/** Emergencies found, and alarms raised for what only looks like one. */
final class EmergencyTable {

	private EmergencyTable() {
	}

	static List<String> lines(MessageReader reader, List<OwnerSet> sets) {
		List<String> lines = new ArrayList<>(
				List.of(MarkdownTable.head(List.of("set", "messages", "urgent by the label", "of them found", "missed",
						"recall", "not urgent by the label", "false alarms", "main sign named"))));
		for (OwnerSet set : sets) {
			lines.add(MarkdownTable.row(set.isThere() ? cells(reader, set) : absent(set)));
		}
		lines.add("");
		return lines;
	}

	private static List<String> cells(MessageReader reader, OwnerSet set) {
		var card = set.scored(reader);
		Tally urgent = card.tally(Field.URGENT);
		Tally signs = card.tally(Field.SIGNS);
		int messages = set.messages().size();
		return List.of(set.title(), String.valueOf(messages), String.valueOf(urgent.labels()),
				String.valueOf(urgent.rightOnes()), String.valueOf(urgent.missedOnes()),
				(urgent.labels() == 0) ? "-" : MarkdownTable.percent(urgent.recall()),
				String.valueOf(messages - urgent.labels()), String.valueOf(urgent.inventedOnes()),
				(signs.labels() == 0) ? "-" : MarkdownTable.percent(signs.recall()));
	}

	private static List<String> absent(OwnerSet set) {
		return List.of(set.title() + " (not there)", "-", "-", "-", "-", "-", "-", "-", "-");
	}

}

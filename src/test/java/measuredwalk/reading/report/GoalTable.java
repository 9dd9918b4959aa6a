package measuredwalk.reading.report;

import java.util.ArrayList;
import java.util.List;

import measuredwalk.reading.MessageReader;
import measuredwalk.reading.score.Scorecard;

/** The figures to reach beside what was reached on each set that is there. */
final class GoalTable {

	private GoalTable() {
	}

	static List<String> lines(MessageReader reader, List<OwnerSet> sets) {
		List<OwnerSet> there = sets.stream().filter(OwnerSet::isThere).toList();
		List<Scorecard> cards = there.stream().map((set) -> set.scored(reader)).toList();
		List<String> columns = new ArrayList<>(List.of("figure", "measure", "must", "aim"));
		there.forEach((set) -> columns.add(set.title()));
		List<String> lines = new ArrayList<>(List.of(MarkdownTable.head(columns)));
		for (Goal goal : Goal.ALL) {
			List<String> cells = new ArrayList<>(List.of(OwnerSet.name(goal.field()), goal.measure(),
					MarkdownTable.percent(goal.must()), MarkdownTable.percent(goal.aim())));
			cards.forEach((card) -> cells.add(goal.reached(card)));
			lines.add(MarkdownTable.row(cells));
		}
		lines.add("");
		return lines;
	}

}

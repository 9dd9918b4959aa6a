package measuredwalk.reading.report;

import java.util.Collections;
import java.util.List;
import java.util.Locale;

import measuredwalk.reading.score.Tally;

/** Rows of a table in Markdown. */
final class MarkdownTable {

	static final List<String> RATES = List.of("labels", "right", "missed", "invented", "precision", "recall", "F1");

	private MarkdownTable() {
	}

	static String head(List<String> columns) {
		return row(columns) + "\n" + row(Collections.nCopies(columns.size(), "---"));
	}

	static String row(List<String> cells) {
		return "| " + String.join(" | ", cells) + " |";
	}

	/**
	 * The cells of {@link #RATES}; a rate of nothing is a dash, not a hundred percent.
	 */
	static List<String> rates(Tally tally) {
		int read = tally.rightOnes() + tally.inventedOnes();
		boolean nothing = read == 0 && tally.labels() == 0;
		return List.of(String.valueOf(tally.labels()), String.valueOf(tally.rightOnes()),
				String.valueOf(tally.missedOnes()), String.valueOf(tally.inventedOnes()),
				(read == 0) ? "-" : percent(tally.precision()), (tally.labels() == 0) ? "-" : percent(tally.recall()),
				nothing ? "-" : percent(tally.f1()));
	}

	static String percent(double share) {
		return String.format(Locale.ROOT, "%.1f %%", 100 * share);
	}

}

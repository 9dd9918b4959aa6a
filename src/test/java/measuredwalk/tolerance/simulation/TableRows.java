package measuredwalk.tolerance.simulation;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** Rows of the table, as Markdown. */
final class TableRows {

	private TableRows() {
	}

	/** Pooled over seeds, with the standard deviation from seed to seed behind it. */
	static String ofPolicy(String name, List<Map<Kind, Tally>> bySeed) {
		double[] pooled = Figures.of(Comparison.pooled(bySeed)).values();
		List<double[]> seeds = bySeed.stream().map((seed) -> Figures.of(seed).values()).toList();
		StringBuilder row = new StringBuilder("| " + name);
		for (int figure = 0; figure < pooled.length; figure++) {
			int column = figure;
			double spread = spread(seeds.stream().mapToDouble((seed) -> seed[column]).toArray());
			row.append(" | ").append(number(pooled[figure])).append(Double.isNaN(spread) ? "" : " ±" + number(spread));
		}
		return row.append(" |").toString();
	}

	static List<String> kindNames() {
		return Arrays.stream(Kind.values())
			.map((kind) -> kind.name().toLowerCase(Locale.ROOT).replace('_', ' '))
			.toList();
	}

	static String ofKinds(String name, Map<Kind, Tally> byKind) {
		StringBuilder row = new StringBuilder("| " + name);
		byKind.values()
			.forEach((tally) -> row.append(" | ")
				.append(number(tally.above()))
				.append(" / ")
				.append(number(tally.under()))
				.append(" / ")
				.append(number(tally.predictedMinusObserved())));
		return row.append(" |").toString();
	}

	static String ofGroup(String name, Tally tally, long allDays) {
		return "| " + String.join(" | ", name, number((double) tally.days() / allDays), number(tally.above()),
				number(tally.under()), number(tally.regret()), number(tally.predictedMinusObserved()),
				number(tally.shareOfBest())) + " |";
	}

	private static String number(double value) {
		if (Double.isNaN(value)) {
			return "-";
		}
		String format = (Math.abs(value) < 2) ? "%.3f" : "%.1f";
		return String.format(Locale.ROOT, format, value).replaceFirst("^(-?)0\\.", "$1.");
	}

	private static double spread(double[] values) {
		double mean = Arrays.stream(values).average().orElseThrow();
		double squares = Arrays.stream(values).map((value) -> (value - mean) * (value - mean)).sum();
		return (values.length < 2) ? Double.NaN : Math.sqrt(squares / (values.length - 1));
	}

}

package measuredwalk.tolerance.simulation;

import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;

/**
 * Prints the table of policies: {@code seeds=tuning|judging count=4 dogs=20 days=180
 * worlds=milder|harder|stress|all policies=model,staircase kinds=yes|no}, each optional.
 */
final class ToleranceTable {

	private final Map<String, String> options;

	private final PrintStream out;

	private ToleranceTable(Map<String, String> options, PrintStream out) {
		this.options = options;
		this.out = out;
	}

	/**
	 * Prints it.
	 * @param arguments options as name=value
	 */
	public static void main(String[] arguments) {
		Map<String, String> options = new HashMap<>(Map.of("seeds", "judging", "count", "4", "dogs", "20", "days",
				"180", "worlds", "milder,harder", "policies", "all", "kinds", "yes"));
		for (String argument : arguments) {
			String[] parts = argument.split("=", 2);
			if (parts.length != 2 || !options.containsKey(parts[0])) {
				throw new IllegalArgumentException(
						"'" + argument + "' is not one of " + options.keySet() + " as name=value");
			}
			options.put(parts[0], parts[1]);
		}
		new ToleranceTable(options, new PrintStream(System.out, true, StandardCharsets.UTF_8)).print();
	}

	private void print() {
		Seeds seeds = Seeds.valueOf(option("seeds").toUpperCase(Locale.ROOT));
		Comparison comparison = new Comparison(number("dogs"), number("days"), seeds.first(number("count")));
		this.out.printf("%s seeds x %s, %s dogs of each of %s kinds, %s days%n", option("seeds"), option("count"),
				option("dogs"), Kind.values().length, option("days"));
		for (World world : worlds()) {
			this.out.printf("%n## %s%n%n| policy | %s |%n", world.name(), String.join(" | ", Figures.NAMES));
			this.out.println("| --- ".repeat(Figures.NAMES.length + 1) + "|");
			List<String> kindRows = new ArrayList<>();
			for (Policy policy : policies()) {
				List<Map<Kind, Tally>> bySeed = comparison.tallies(world, policy);
				this.out.println(row(policy.name(), bySeed));
				kindRows.add(kindRow(policy.name(), Comparison.pooled(bySeed)));
			}
			if (option("kinds").equals("yes")) {
				printKinds(kindRows);
			}
		}
	}

	private void printKinds(List<String> rows) {
		Stream<String> kinds = Arrays.stream(Kind.values())
			.map((kind) -> kind.name().toLowerCase(Locale.ROOT).replace('_', ' '));
		this.out.printf("%nabove / under / predicted minus observed, by kind:%n%n| policy | %s |%n",
				String.join(" | ", kinds.toList()));
		this.out.println("| --- ".repeat(Kind.values().length + 1) + "|");
		rows.forEach(this.out::println);
	}

	/** Pooled over seeds, with the standard deviation from seed to seed behind it. */
	private static String row(String name, List<Map<Kind, Tally>> bySeed) {
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

	private static String kindRow(String name, Map<Kind, Tally> byKind) {
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

	private static String number(double value) {
		if (Double.isNaN(value)) {
			return "-";
		}
		return String.format(Locale.ROOT, (Math.abs(value) < 2) ? "%.3f" : "%.1f", value)
			.replaceFirst("^(-?)0\\.", "$1.");
	}

	private static double spread(double[] values) {
		double mean = Arrays.stream(values).average().orElseThrow();
		double squares = Arrays.stream(values).map((value) -> (value - mean) * (value - mean)).sum();
		return (values.length < 2) ? Double.NaN : Math.sqrt(squares / (values.length - 1));
	}

	private List<World> worlds() {
		Stream<World> all = Stream.of(Worlds.MILDER, Worlds.HARDER);
		return switch (option("worlds")) {
			case "milder" -> List.of(Worlds.MILDER);
			case "harder" -> List.of(Worlds.HARDER);
			case "milder,harder" -> all.toList();
			case "stress" -> Worlds.stressed(Worlds.HARDER);
			case "milder stress" -> Worlds.stressed(Worlds.MILDER);
			case "all" -> Stream
				.concat(all,
						Stream.of(Worlds.MILDER, Worlds.HARDER).flatMap((world) -> Worlds.stressed(world).stream()))
				.toList();
			default -> throw new IllegalArgumentException("no such worlds: " + option("worlds"));
		};
	}

	private List<Policy> policies() {
		List<String> wanted = List.of(option("policies").split(","));
		return Comparison.policies()
			.stream()
			.filter((policy) -> wanted.contains("all") || wanted.contains(policy.name()))
			.toList();
	}

	private String option(String name) {
		return this.options.get(name);
	}

	private int number(String name) {
		return Integer.parseInt(option(name));
	}

}

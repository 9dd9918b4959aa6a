package measuredwalk.tolerance.simulation;

import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * Prints the table of policies; the options are those of {@link TableOptions}.
 */
final class ToleranceTable {

	private final TableOptions options;

	private final Comparison comparison;

	private final PrintStream out;

	private ToleranceTable(TableOptions options, PrintStream out) {
		this.options = options;
		this.comparison = options.comparison();
		this.out = out;
	}

	/**
	 * Prints it.
	 * @param arguments options as name=value
	 */
	public static void main(String[] arguments) {
		PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
		new ToleranceTable(TableOptions.of(arguments), out).print();
	}

	private void print() {
		this.out.println(this.options);
		for (World world : this.options.worlds()) {
			this.out.printf("%n## %s%n", world.name());
			printPolicies(world);
			this.options.grouping().ifPresent((grouping) -> printGroups(world, grouping));
		}
	}

	private void printPolicies(World world) {
		printHead("policy", List.of(Figures.NAMES));
		List<String> kindRows = new ArrayList<>();
		for (Policy policy : this.options.policies()) {
			List<Map<Kind, Tally>> bySeed = this.comparison.tallies(world, policy);
			this.out.println(TableRows.ofPolicy(policy.name(), bySeed));
			kindRows.add(TableRows.ofKinds(policy.name(), Comparison.pooled(bySeed)));
		}
		if (this.options.byKind()) {
			this.out.printf("%nAbove / under / predicted minus observed, by kind:%n");
			printHead("policy", TableRows.kindNames());
			kindRows.forEach(this.out::println);
		}
	}

	private void printGroups(World world, Grouping grouping) {
		for (Policy policy : this.options.policies()) {
			Map<String, Tally> groups = this.comparison.grouped(world, policy, grouping);
			long days = groups.values().stream().mapToLong(Tally::days).sum();
			printHead(policy.name(),
					List.of("share of days", "above", "under", "regret", "predicted minus observed", "share of best"));
			groups.forEach((name, tally) -> this.out.println(TableRows.ofGroup(name, tally, days)));
		}
	}

	private void printHead(String first, List<String> columns) {
		this.out.printf("%n| %s | %s |%n", first, String.join(" | ", columns));
		this.out.println("| --- ".repeat(columns.size() + 1) + "|");
	}

}

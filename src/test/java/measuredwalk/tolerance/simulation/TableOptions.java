package measuredwalk.tolerance.simulation;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * What the table shall show, given as {@code name=value}.
 *
 * @param values the options by name
 */
record TableOptions(Map<String, String> values) {

	private static final Map<String, String> DEFAULTS = Map.of("seeds", "judging", "count", "4", "dogs", "20", "days",
			"180", "worlds", "milder,harder", "policies", "all", "kinds", "yes", "by", "nothing");

	TableOptions {
		values = new TreeMap<>(values);
	}

	/**
	 * Reads options.
	 * @param arguments as {@code name=value}
	 * @return the options, with defaults for what was not given
	 * @throws IllegalArgumentException when a name or a value is unknown; the message
	 * lists those there are
	 */
	static TableOptions of(String... arguments) {
		Map<String, String> values = new TreeMap<>(DEFAULTS);
		for (String argument : arguments) {
			String[] parts = argument.split("=", 2);
			if (parts.length != 2 || !values.containsKey(parts[0])) {
				throw new IllegalArgumentException(
						"'" + argument + "' is not name=value with one of the names " + values.keySet());
			}
			values.put(parts[0], parts[1]);
		}
		return new TableOptions(values);
	}

	Comparison comparison() {
		Seeds seeds = Seeds.valueOf(value("seeds").toUpperCase(Locale.ROOT));
		return new Comparison(number("dogs"), number("days"), seeds.first(number("count")));
	}

	List<World> worlds() {
		List<World> known = Stream
			.concat(Stream.of(Worlds.MILDER, Worlds.HARDER)
				.flatMap((world) -> Stream.concat(Stream.of(world), Worlds.stressed(world).stream())),
					Worlds.SIMPLE.stream())
			.toList();
		List<World> wanted = switch (value("worlds")) {
			case "all" -> known;
			case "simple" -> Worlds.SIMPLE;
			case "stress" -> Worlds.stressed(Worlds.HARDER);
			case "milder stress" -> Worlds.stressed(Worlds.MILDER);
			default -> known.stream().filter((world) -> named("worlds").contains(world.name())).toList();
		};
		return atLeastOne(wanted, "worlds", known.stream().map(World::name).toList());
	}

	List<Policy> policies() {
		List<Policy> known = Comparison.policies();
		List<Policy> wanted = known.stream()
			.filter((policy) -> value("policies").equals("all") || named("policies").contains(policy.name()))
			.toList();
		return atLeastOne(wanted, "policies", known.stream().map(Policy::name).toList());
	}

	boolean byKind() {
		return value("kinds").equals("yes");
	}

	Optional<Grouping> grouping() {
		return value("by").equals("nothing") ? Optional.empty()
				: Optional.of(Grouping.valueOf(value("by").toUpperCase(Locale.ROOT)));
	}

	private static <T> List<T> atLeastOne(List<T> wanted, String option, List<String> known) {
		if (wanted.isEmpty()) {
			throw new IllegalArgumentException("no such " + option + "; there are 'all' and " + known);
		}
		return wanted;
	}

	private List<String> named(String option) {
		return List.of(value(option).split(","));
	}

	private String value(String option) {
		return this.values.get(option);
	}

	private int number(String option) {
		return Integer.parseInt(value(option));
	}

	@Override
	public String toString() {
		return value("seeds") + " seeds x " + value("count") + ", " + value("dogs") + " dogs of each of "
				+ Kind.values().length + " kinds, " + value("days") + " days";
	}

}

package measuredwalk.tolerance.simulation;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Lets the same dogs walk by several policies.
 *
 * @param dogsPerKind dogs of each kind for each seed
 * @param days days of each trial
 * @param seeds the seeds
 */
record Comparison(int dogsPerKind, int days, long[] seeds) {

	/** All policies of the table, the best known first. */
	static List<Policy> policies() {
		return List.of(new Oracle(), new ModelPolicy(), new BiasedCoinStaircase(), new TenPercentRule(),
				new CarelessFilter(), new FixedPlan());
	}

	/**
	 * The days counted for each seed.
	 * @param world the world
	 * @param policy the policy
	 * @return one map for each seed
	 */
	List<Map<Kind, Tally>> tallies(World world, Policy policy) {
		List<Map<Kind, Tally>> bySeed = new ArrayList<>();
		for (long seed : this.seeds) {
			bySeed.add(tallies(world, policy, seed));
		}
		return bySeed;
	}

	/**
	 * The figures over all seeds together.
	 * @param world the world
	 * @param policy the policy
	 * @return the figures
	 */
	Figures figures(World world, Policy policy) {
		return Figures.of(pooled(tallies(world, policy)));
	}

	/**
	 * The days of all seeds in groups.
	 * @param world the world
	 * @param policy the policy
	 * @param grouping how days are told apart
	 * @return the counts, by the name of the group
	 */
	Map<String, Tally> grouped(World world, Policy policy, Grouping grouping) {
		Map<String, Tally> groups = new TreeMap<>();
		for (long seed : this.seeds) {
			for (Kind kind : Kind.values()) {
				for (int number = 0; number < this.dogsPerKind; number++) {
					Household home = Household.draw(world, kind, number, seed);
					Trial.run(home, policy, this.days)
						.forEach((day) -> groups.computeIfAbsent(grouping.of(home, day), (ignored) -> new Tally())
							.add(day));
				}
			}
		}
		return groups;
	}

	static Map<Kind, Tally> pooled(List<Map<Kind, Tally>> bySeed) {
		Map<Kind, Tally> all = new EnumMap<>(Kind.class);
		bySeed.forEach((seed) -> seed
			.forEach((kind, tally) -> all.computeIfAbsent(kind, (ignored) -> new Tally()).add(tally)));
		return all;
	}

	private Map<Kind, Tally> tallies(World world, Policy policy, long seed) {
		Map<Kind, Tally> byKind = new EnumMap<>(Kind.class);
		for (Kind kind : Kind.values()) {
			Tally tally = new Tally();
			for (int number = 0; number < this.dogsPerKind; number++) {
				Household home = Household.draw(world, kind, number, seed);
				tally.add(home, Trial.run(home, policy, this.days));
			}
			byKind.put(kind, tally);
		}
		return byKind;
	}

}

package measuredwalk.tolerance.simulation;

import java.util.List;
import java.util.stream.Stream;

/**
 * The worlds of the table: two to judge in, the simple ones, and the stress worlds.
 */
final class Worlds {

	/**
	 * Like the outside judge: log-normal days, decent observers, flares that recover,
	 * drops.
	 */
	static final World MILDER = new World("milder", BodyLaws.MILDER, List.of(OwnerKind.GOOD, OwnerKind.AVERAGE,
			OwnerKind.GOOD, OwnerKind.AVERAGE, OwnerKind.AVERAGE, OwnerKind.WORRIED), AnswerLaws.USUAL, List.of());

	/**
	 * Every kind of owner, days that hang together, fatigue, and overload that is paid
	 * for.
	 */
	static final World HARDER = new World("harder", BodyLaws.HARDER, List.of(OwnerKind.GOOD, OwnerKind.AVERAGE,
			OwnerKind.POOR, OwnerKind.AVERAGE, OwnerKind.WORRIED, OwnerKind.CARELESS), AnswerLaws.USUAL, List.of());

	/**
	 * Level, luck and flares only, with the milder world's owners. How much a day's luck
	 * is worth decides what regret even the oracle has, so there are three of them.
	 */
	static final List<World> SIMPLE = Stream.of(0.08, 0.10, 0.15)
		.map((spread) -> MILDER.named("simple: luck " + spread).withBody(BodyLaws.simple(spread)))
		.toList();

	private Worlds() {
	}

	/** The stress worlds, each the given world with one thing made hard. */
	static List<World> stressed(World world) {
		return Stream
			.of(world.named("poor observers").withOwners(OwnerKind.POOR),
					world.named("never reports").withOwners(OwnerKind.NEVER_REPORTS),
					world.named("8 % false alarms").withOwners(OwnerKind.WORRIED),
					world.named("carry-over 0").withBody(world.body().withCarriedShare(0)),
					world.named("carry-over .8").withBody(world.body().withCarriedShare(0.8)),
					world.named("stiff baseline").withBody(world.body().withUsualStiffness(new Range(0.15, 0.35))),
					world.named("worried and stiff")
						.withOwners(OwnerKind.WORRIED)
						.withBody(world.body().withUsualStiffness(new Range(0.15, 0.35))),
					world.named("missing in runs").withAnswers(world.answers().withSilence(SilenceLaw.IN_RUNS, 0.35)),
					world.named("missing not at random")
						.withAnswers(world.answers().withSilence(SilenceLaw.NOT_AT_RANDOM, 0.15)),
					world.named("late 5 %").withAnswers(world.answers().withLate(0.05)),
					world.named("misread 10 %").withAnswers(world.answers().withMisread(0.10)),
					world.named("improving drug").befalling(Event.DRUG_STARTED),
					world.named("heat wave").befalling(Event.HEAT_WAVE),
					world.named("slow decline").befalling(Event.SLOW_DECLINE))
			.map((stressed) -> stressed.named(world.name() + ": " + stressed.name()))
			.toList();
	}

}

package measuredwalk.tolerance.simulation;

import java.time.LocalDate;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.Stream;

import measuredwalk.tolerance.ToleranceEvent;
import measuredwalk.tolerance.ToleranceEvent.DogEnrolled;
import measuredwalk.tolerance.ToleranceEvent.MedicationChanged;
import measuredwalk.tolerance.WalkPlan;

/**
 * One dog, its owner and the clinic's plan for it.
 *
 * @param kind what kind of dog
 * @param body its body
 * @param influences what befalls it
 * @param owner who walks it
 * @param plan the clinic's plan
 * @param luck all luck of this household
 */
record Household(Kind kind, Body body, List<Influence> influences, Owner owner, WalkPlan plan, Luck luck) {

	/** A Monday, so that weekends fall where they should. */
	static final LocalDate ENROLLED = LocalDate.of(2026, 1, 5);

	/**
	 * True tolerance over the plan. Plans are meant to be careful, yet a good part of
	 * them are not: the fixed plan of the outside trials is above on 45 % and far below
	 * on 28 % of days.
	 */
	static final Range TOLERANCE_OVER_PLAN = new Range(0.75, 2.40);

	private static final int[] WALKS_PER_DAY = { 1, 2, 2, 3 };

	private static final double LEAST_OF_PLAN = 0.3;

	private static final double MOST_OF_PLAN = 2.25;

	Household {
		influences = List.copyOf(influences);
	}

	static Household draw(World world, Kind kind, int number, long seed) {
		Luck luck = Luck.of(seed).on(Topic.KIND, kind.ordinal()).on(Topic.SEED, number);
		Body body = world.body().draw(kind, luck.on(Topic.BODY, 0));
		Luck story = luck.on(Topic.STORY, 0);
		List<Influence> influences = Stream.concat(kind.events().stream(), world.befallsAll().stream())
			.map((event) -> event.draw(story))
			.toList();
		OwnerKind ownerKind = world.owners().get((number + kind.ordinal()) % world.owners().size());
		Owner owner = ownerKind.draw(kind, world.answers(), luck.on(Topic.OWNER, 0));
		return new Household(kind, body, influences, owner, plan(body, luck.on(Topic.PLAN, 0)), luck);
	}

	private static WalkPlan plan(Body body, Luck luck) {
		double minutes = Math.max(4, Math.rint(body.typicalMinutes() / TOLERANCE_OVER_PLAN.drawByRatio(luck)));
		int walks = WALKS_PER_DAY[(int) (luck.uniform() * WALKS_PER_DAY.length)];
		return new WalkPlan(minutes, walks, Math.max(2, Math.rint(LEAST_OF_PLAN * minutes)),
				Math.min(240, Math.rint(MOST_OF_PLAN * minutes)));
	}

	DogEnrolled enrolled() {
		return new DogEnrolled(ENROLLED, this.plan, null, null, true, null);
	}

	/** What the clinic writes down on that day. */
	List<ToleranceEvent> clinicNotes(int day) {
		return this.influences.stream()
			.filter((influence) -> influence instanceof Influence.DrugStarted drug && drug.firstDay() == day)
			.<ToleranceEvent>map((influence) -> new MedicationChanged(ENROLLED.plusDays(day),
					MedicationChanged.Change.STARTED, "nsaid"))
			.toList();
	}

	OptionalInt dropDay() {
		return this.influences.stream()
			.filter(Influence.SuddenDrop.class::isInstance)
			.mapToInt((influence) -> ((Influence.SuddenDrop) influence).firstDay())
			.findFirst();
	}

}

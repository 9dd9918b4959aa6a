package measuredwalk.tolerance.simulation;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;

import measuredwalk.signs.Sign;
import measuredwalk.tolerance.ToleranceEvent;
import measuredwalk.tolerance.ToleranceEvent.DogEnrolled;

/**
 * The days of a simulated dog as a clinic's charts see them: what was told, and what the
 * model believed each morning.
 *
 * @param days the days, the first day first
 * @param dropDay the day, from 1, on which it lost a quarter or more of its tolerance
 */
public record SimulatedCourse(List<Day> days, OptionalInt dropDay) {

	public SimulatedCourse {
		days = List.copyOf(days);
	}

	/**
	 * A day.
	 *
	 * @param told whether anything was told of it
	 * @param signs all signs told of it
	 * @param worse whether it was said to be worse than usual
	 * @param toleranceMedian median of the model's belief that morning, in minutes
	 */
	public record Day(boolean told, List<Sign> signs, boolean worse, double toleranceMedian) {
	}

	/** Who chooses the walks. */
	public enum Dosing {

		/** The model, in the closed loop. */
		MODEL,
		/** The clinic's plan, whatever happens; the model only looks on. */
		FIXED

	}

	/**
	 * Dogs of the milder world.
	 * @param dropping true for dogs that lose 25 to 45 % overnight, false for steady ones
	 * @param dosing who chooses the walks
	 * @param dogs how many dogs
	 * @param days how many days
	 * @param judging true for the seeds that figures are reported from, false for those
	 * that constants are chosen by
	 * @return the courses
	 */
	public static List<SimulatedCourse> of(boolean dropping, Dosing dosing, int dogs, int days, boolean judging) {
		long seed = (judging ? Seeds.JUDGING : Seeds.TUNING).first(1)[0];
		Policy model = new ModelPolicy();
		Policy policy = (dosing == Dosing.MODEL) ? model : new LookingOn(model);
		List<SimulatedCourse> courses = new ArrayList<>();
		for (int number = 0; number < dogs; number++) {
			Household home = Household.draw(Worlds.MILDER, dropping ? Kind.SUDDEN_DROP : Kind.STEADY, number, seed);
			courses.add(lived(home, policy, days));
		}
		return courses;
	}

	private static SimulatedCourse lived(Household home, Policy policy, int days) {
		List<ToleranceEvent> told = new ArrayList<>();
		List<TrialDay> trial = Trial.run(home, policy, days, told::add);
		Map<LocalDate, List<ToleranceEvent>> byDay = new HashMap<>();
		told.forEach((event) -> byDay.computeIfAbsent(event.date(), (date) -> new ArrayList<>()).add(event));
		return new SimulatedCourse(trial.stream()
			.map((day) -> day(byDay.getOrDefault(Household.ENROLLED.plusDays(day.day()), List.of()), day.dose()))
			.toList(), home.dropDay());
	}

	private static Day day(List<ToleranceEvent> told, Dose dose) {
		List<Sign> signs = new ArrayList<>();
		boolean worse = false;
		boolean any = false;
		for (ToleranceEvent event : told) {
			if (event instanceof ToleranceEvent.WalkTaken walk) {
				signs.addAll(walk.signs());
				any = true;
			}
			else if (event instanceof ToleranceEvent.MorningSeen morning) {
				signs.addAll(morning.signs());
				worse |= morning.overall() == measuredwalk.signs.Overall.WORSE;
				any = true;
			}
		}
		return new Day(any, List.copyOf(signs), worse, dose.middle());
	}

	/** The clinic's plan is walked, and the model only keeps its belief. */
	private record LookingOn(Policy model) implements Policy {

		@Override
		public String name() {
			return "fixed plan, looked on";
		}

		@Override
		public PolicyCourse enrol(DogEnrolled dog, Luck luck) {
			PolicyCourse looking = this.model.enrol(dog, luck);
			return new PolicyCourse() {

				@Override
				public void accept(ToleranceEvent event) {
					looking.accept(event);
				}

				@Override
				public Dose suggest(LocalDate date, Insight insight) {
					Dose belief = looking.suggest(date, insight);
					return new Dose(dog.plan().walksPerDay(), dog.plan().planMinutes(), belief.chance(), belief.low(),
							belief.middle(), belief.high(), "");
				}

			};
		}

	}

}

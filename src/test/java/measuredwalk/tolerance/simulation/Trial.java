package measuredwalk.tolerance.simulation;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;

import measuredwalk.tolerance.ToleranceEvent;
import measuredwalk.tolerance.WalkPlan;

/** Lets one household walk by one policy, day after day, in the closed loop. */
final class Trial {

	private static final int LATE_DAYS = 2;

	private final Household home;

	private final Outing outing;

	private final WalkAnswers walkAnswers;

	private final MorningAnswers morningAnswers;

	private final Answers answers;

	private final PolicyCourse course;

	private Trial(Household home, Policy policy, Consumer<ToleranceEvent> journal) {
		this.home = home;
		this.outing = new Outing(home);
		this.walkAnswers = new WalkAnswers(home);
		this.morningAnswers = new MorningAnswers(home);
		this.course = policy.enrol(home.enrolled(), home.luck().on(Topic.POLICY, 0));
		this.answers = new Answers(LATE_DAYS, journal.andThen(this.course::accept));
	}

	/**
	 * Runs it.
	 * @param home who walks
	 * @param policy by what
	 * @param days how many days
	 * @return the days, in order
	 */
	static List<TrialDay> run(Household home, Policy policy, int days) {
		return run(home, policy, days, (event) -> {
		});
	}

	/**
	 * Runs it, and shows what was told.
	 * @param home who walks
	 * @param policy by what
	 * @param days how many days
	 * @param journal gets each event when it is told
	 * @return the days, in order
	 */
	static List<TrialDay> run(Household home, Policy policy, int days, Consumer<ToleranceEvent> journal) {
		return new Trial(home, policy, journal).days(days);
	}

	private List<TrialDay> days(int days) {
		List<TrialDay> walked = new ArrayList<>(days);
		BodyState state = BodyState.FRESH;
		DayLoads loads = new DayLoads(0, 0, 0);
		for (int day = 1; day <= days; day++) {
			this.answers.beginDay(day, this.home.clinicNotes(day));
			if (day > 1) {
				this.morningAnswers.tell(day, loads.ratio(), state.sorenessShift())
					.ifPresent((seen) -> this.answers.tell(seen, seen.late()));
			}
			Morning morning = this.home.body().morning(state, this.home.influences(), day);
			Dose dose = suggest(morning, day);
			Luck luck = this.home.luck().on(Topic.DAY, day);
			double innovation = this.home.body().day().innovation(luck);
			double rested = morning.restedTolerance(innovation, this.home.body().day().passing(luck));
			walked.add(judged(morning, dose, rested, day));
			loads = walk(morning, rested, dose, day);
			state = this.home.body().dayLater(state, innovation, loads, this.home.luck().on(Topic.FLARE, day));
		}
		return walked;
	}

	private Dose suggest(Morning morning, int day) {
		LocalDate date = Household.ENROLLED.plusDays(day);
		return this.course.suggest(date, (walks) -> bestSafe(morning, walks));
	}

	private double bestSafe(Morning morning, int walks) {
		WalkPlan plan = this.home.plan();
		double best = morning.mostMinutes(morning.carefulTolerance(), walks);
		return Math.max(plan.minMinutes(), Math.min(plan.maxMinutes(), best));
	}

	private TrialDay judged(Morning morning, Dose dose, double rested, int day) {
		int walks = Math.max(1, dose.walks());
		return new TrialDay(day, dose, morning.mostMinutes(rested, 1), morning.mostMinutes(rested, walks),
				morning.mostMinutes(morning.middleTolerance(), walks), bestSafe(morning, walks));
	}

	private DayLoads walk(Morning morning, double rested, Dose dose, int day) {
		List<Walked> walks = this.outing.walk(morning, rested, dose, day);
		for (int number = 0; number < walks.size(); number++) {
			this.walkAnswers.tell(walks.get(number), day, number)
				.ifPresent((taken) -> this.answers.tell(taken, taken.late()));
		}
		return Outing.loads(morning, walks, rested);
	}

}

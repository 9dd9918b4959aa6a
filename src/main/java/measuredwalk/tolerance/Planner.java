package measuredwalk.tolerance;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

import measuredwalk.tolerance.ToleranceEvent.MorningSeen;
import measuredwalk.tolerance.ToleranceEvent.WalkTaken;
import measuredwalk.tolerance.filter.GridLaw;
import measuredwalk.tolerance.filter.PointMasses;
import org.jspecify.annotations.Nullable;

/** Plans a day from the evening before and this morning, and closes it again. */
final class Planner {

	private final Parts parts;

	Planner(Parts parts) {
		this.parts = parts;
	}

	/**
	 * Plans a day.
	 * @param before the evening before
	 * @param today what was told of today; its walks are not looked at
	 * @param standing what stands about the dog
	 * @return the plan
	 */
	DayPlan plan(Evening before, DayFacts today, Standing standing) {
		MorningSeen told = today.morning();
		MorningGrade grade = (told != null) ? MorningGrade.of(told, before.usual().usualGrade()) : null;
		PointMasses belief = belief(before, before.walks(), likelihood(before, told, grade), today, standing);
		GridLaw law = law(belief);
		DayWalks walks = before.walks().cleanUpTo(before.trusted());
		GridLaw doseLaw = walks.equals(before.walks()) ? law : this.parts.filter()
			.lawOvernight(before.belief(), walks, likelihood(before, told, grade), afterMedicine(today, standing));
		Dose dose = leastDose(before, walks, today, standing, grade, dose(doseLaw, today, standing));
		Alarm alarm = alarm(before, today, standing);
		Situation situation = new Situation(today.date(), standing, before.past(), grade, alarm, dose.minutes(),
				dose.median());
		UsualMornings usual = (grade != null) ? before.usual().with(grade, this.parts.settings().mornings())
				: before.usual();
		return new DayPlan(belief, law, usual, grade, situation, this.parts.clinical().decide(situation));
	}

	private record Dose(double minutes, double median) {

		Dose least(Dose other) {
			return new Dose(Math.min(this.minutes, other.minutes), Math.min(this.median, other.median));
		}

	}

	private @Nullable MorningLikelihood likelihood(Evening before, @Nullable MorningSeen told,
			@Nullable MorningGrade grade) {
		if (told == null || grade == null) {
			return null;
		}
		double power = told.late() ? this.parts.settings().owners().latePower() : 1;
		return new MorningLikelihood(this.parts.settings().mornings(), before.usual(), grade, power);
	}

	private PointMasses belief(Evening before, DayWalks walks, @Nullable MorningLikelihood morning, DayFacts today,
			Standing standing) {
		return this.parts.filter().overnight(before.belief(), walks, morning, afterMedicine(today, standing));
	}

	private boolean afterMedicine(DayFacts today, Standing standing) {
		return standing.changedMedicineWithin(this.parts.settings().drift().afterMedicineDays(), today.date());
	}

	private GridLaw law(PointMasses belief) {
		return this.parts.filter().today(belief, DayWalks.NONE);
	}

	private Dose dose(GridLaw law, DayFacts today, Standing standing) {
		DoseSettings dosing = this.parts.settings().dosing();
		double allowed = standing.isNew(dosing.newDays(), today.date()) ? dosing.troubleWhenNew() : dosing.trouble();
		double minutes = this.parts.dosing().forWholeDay(law, standing.plan().walksPerDay(), allowed);
		return new Dose(minutes, Math.exp(law.quantile(0.5)));
	}

	/** The least dose over all versions of what was told with fewer signs. */
	private Dose leastDose(Evening before, DayWalks told, DayFacts today, Standing standing,
			@Nullable MorningGrade grade, Dose actual) {
		Dose least = actual;
		if (!before.walks().hasSigns() && (grade == null || grade.seen() == 0)) {
			return least;
		}
		for (DayWalks walks : lighter(before, told, standing)) {
			for (MorningGrade lighter : lighter(grade)) {
				if (!walks.equals(told) || !Objects.equals(lighter, grade)) {
					MorningLikelihood morning = likelihood(before, today.morning(), lighter);
					GridLaw law = this.parts.filter()
						.lawOvernight(before.belief(), walks, morning, afterMedicine(today, standing));
					least = least.least(dose(law, today, standing));
				}
			}
		}
		return least;
	}

	private List<DayWalks> lighter(Evening before, DayWalks told, Standing standing) {
		List<DayWalks> lighter = new ArrayList<>();
		lighter.add(told);
		for (List<WalkTaken> version : Lighter.versions(before.facts().walks())) {
			DayWalks walks = DayWalks
				.of(version, before.walks().before(), standing.plan().walksPerDay(), this.parts.settings().walking())
				.cleanUpTo(before.trusted());
			if (!lighter.contains(walks)) {
				lighter.add(walks);
			}
		}
		return lighter;
	}

	private static List<@Nullable MorningGrade> lighter(@Nullable MorningGrade grade) {
		List<@Nullable MorningGrade> grades = new ArrayList<>();
		grades.add(grade);
		if (grade != null) {
			for (int seen = Math.min(2, grade.seen()) - 1; seen >= 0; seen--) {
				grades.add(new MorningGrade(seen, seen));
			}
		}
		return grades;
	}

	private static Alarm alarm(Evening before, DayFacts today, Standing standing) {
		boolean onMedicine = !standing.medicines().isEmpty();
		return Alarm.of(before.facts().withoutMorning(), onMedicine).worse(Alarm.of(today, onMedicine));
	}

	/**
	 * Closes a day.
	 * @param plan its plan
	 * @param before the evening before
	 * @param today all that was told of the day
	 * @return the evening
	 */
	Evening close(DayPlan plan, Evening before, DayFacts today) {
		double trusted = this.parts.dosing().trusted(plan.today());
		DayWalks walks = walks(before, today, plan.situation().plan());
		return new Evening(plan.belief(), today, walks, trusted, plan.usual(), before.past().with(past(plan, today)));
	}

	DayWalks walks(Evening before, DayFacts today, WalkPlan plan) {
		return DayWalks.of(today.walks(), before.walks().last().yesterday(), plan.walksPerDay(),
				this.parts.settings().walking());
	}

	private static PastDay past(DayPlan plan, DayFacts today) {
		double walked = 0;
		double longestClean = 0;
		boolean signs = false;
		for (WalkTaken walk : today.walks()) {
			boolean clean = SignMeaning.counting(walk.signs()).isEmpty();
			walked += walk.minutes();
			longestClean = Math.max(longestClean, clean ? walk.minutes() : 0);
			signs |= !clean;
		}
		return new PastDay(plan.decision().minutes(), plan.decision().walks(), plan.morning(), today.heard(), walked,
				longestClean, signs, plan.situation().alarm());
	}

}

package measuredwalk.tolerance;

import java.util.ArrayList;
import java.util.List;

import measuredwalk.tolerance.filter.GridLaw;
import measuredwalk.tolerance.filter.PointMasses;

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
		ToleranceSettings settings = this.parts.settings();
		Night night = Night.of(before, today, standing);
		PointMasses belief = this.parts.filter()
			.overnight(before.belief(), before.walks(), night.likelihood(settings, night.grade()),
					night.afterMedicine(settings));
		GridLaw law = this.parts.filter().today(belief, DayWalks.NONE);
		LeastDose.Dose dose = new LeastDose(this.parts, night).of(law);
		Situation situation = new Situation(today.date(), standing, before.past(), night.grade(), night.alarm(),
				dose.minutes(), dose.settled(), dose.median());
		double widening = night.widening(settings);
		return new DayPlan(belief, law.widened(widening), widening, night.usual(settings), night.grade(), situation,
				this.parts.clinical().decide(situation));
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
		WalkPlan agreed = plan.situation().plan();
		DayWalks walks = walks(before, today, agreed);
		// A load excuses no sign here: the model doubts itself as early as without it.
		DayWalks plain = today.hasHarderWalk() ? walks(before, today.withoutLoads(), agreed) : walks;
		return new Evening(plan.belief(), today, walks, trusted, plan.usual(), check(plan, before, plain),
				before.past().with(PastDay.of(plan, today)));
	}

	private PredictiveCheck check(DayPlan plan, Evening before, DayWalks walks) {
		List<WalkEvidence> told = new ArrayList<>(walks.evidence());
		told.removeIf(WalkEvidence::late);
		if (told.isEmpty()) {
			return before.check();
		}
		SignForecast.OfMorning forecast = this.parts.filter().forecast(plan.belief());
		double excess = 0;
		double variance = 0;
		for (WalkEvidence walk : told) {
			double chance = forecast.chance(walk.total());
			excess += (walk.hasSigns() ? 1 : 0) - chance;
			variance += told.size() * chance * (1 - chance);
		}
		return before.check().with(excess, variance, this.parts.settings().check());
	}

	DayWalks walks(Evening before, DayFacts today, WalkPlan plan) {
		return DayWalks.of(today.walks(), before.walks().last().yesterday(), plan.walksPerDay(),
				this.parts.settings().walking());
	}

}

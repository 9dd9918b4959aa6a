package measuredwalk.tolerance;

import java.util.ArrayList;
import java.util.List;

import measuredwalk.tolerance.filter.GridLaw;

/** Makes the answer for the time of asking from the day's plan and its walks so far. */
final class Answering {

	private static final double LOW_END = 0.10;

	private static final double HIGH_END = 0.90;

	/** The owner's range: this much under and over the minutes. */
	private static final double RANGE_UNDER = 0.85;

	private static final double RANGE_OVER = 1.1;

	private final Parts parts;

	Answering(Parts parts) {
		this.parts = parts;
	}

	Suggestion answer(DayPlan plan, DayWalks walks, DayFacts facts) {
		Decision decision = plan.decision();
		int left = Math.max(0, decision.walks() - walks.evidence().size());
		if (walks.evidence().isEmpty()) {
			return suggestion(plan, plan.today(), left, decision.minutes(), new ReasonsOfDay().of(plan));
		}
		GridLaw today = this.parts.filter().today(plan.belief(), walks).widened(plan.widening());
		double most = decision.minutes() - facts.minutesOfLoad() / Math.max(1, left);
		double minutes = Math.min(most, rest(plan, walks, facts, Math.max(1, left)));
		double least = Math.min(decision.minutes(), plan.situation().plan().minMinutes());
		minutes = Math.max(least, Math.floor(minutes));
		List<Reason> reasons = new ArrayList<>(new ReasonsOfDay().of(plan));
		int place = comesFirst(decision.advice()) ? 1 : 0;
		if (left == 0) {
			reasons.add(place, Reason.WALKS_OF_TODAY_DONE);
		}
		else if (minutes < decision.minutes()) {
			reasons.add(place, Reason.EARLIER_WALK_TODAY);
		}
		if (facts.hasHarderWalk()) {
			reasons.remove(Reason.HARDER_WALK_COUNTS_MORE);
			int shorter = reasons.indexOf(Reason.EARLIER_WALK_TODAY);
			reasons.add((shorter < 0) ? reasons.size() : shorter + 1, Reason.HARDER_WALK_COUNTS_MORE);
		}
		return suggestion(plan, today, left, minutes, reasons);
	}

	/** An alarm is named before anything about today's walks. */
	private static boolean comesFirst(Advice advice) {
		return advice == Advice.EMERGENCY || advice == Advice.CALL_CLINIC;
	}

	/** Least over all versions of today's walks with fewer signs. */
	private double rest(DayPlan plan, DayWalks walks, DayFacts facts, int left) {
		WalkSettings walking = this.parts.settings().walking();
		WalkPlan agreed = plan.situation().plan();
		double allowed = this.parts.settings().dosing().trouble();
		double gap = DayWalks.usualGap(agreed.walksPerDay(), walking);
		double least = Double.POSITIVE_INFINITY;
		for (List<ToleranceEvent.WalkTaken> version : Lighter.versions(facts.walks())) {
			DayWalks lighter = DayWalks.of(version, walks.before(), agreed.walksPerDay(), walking);
			GridLaw law = this.parts.filter().today(plan.belief(), lighter);
			least = Math.min(least, this.parts.dosing().forRest(law, lighter.last(), left, gap, allowed));
			GridLaw wider = law.widened(plan.widening());
			least = Math.min(least, this.parts.dosing().forRest(wider, lighter.last(), left, gap, allowed));
		}
		return least;
	}

	private Suggestion suggestion(DayPlan plan, GridLaw today, int walks, double minutes, List<Reason> reasons) {
		double low = Math.max(Math.min(minutes, plan.situation().plan().minMinutes()),
				Math.floor(RANGE_UNDER * minutes));
		double high = Math.min(Math.ceil(RANGE_OVER * minutes), Math.floor(plan.decision().mostMinutes()));
		return new Suggestion(plan.situation().date(), walks, minutes, low, Math.max(minutes, high),
				today.below(Math.log(minutes)), Math.exp(today.quantile(0.5)), Math.exp(today.quantile(LOW_END)),
				Math.exp(today.quantile(HIGH_END)), new AdviceOfDay().of(plan), reasons);
	}

}

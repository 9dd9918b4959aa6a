package measuredwalk.tolerance;

import java.time.LocalDate;
import java.util.List;

/** Dogs for which the tool suggests nothing of its own. */
final class PlanOnly {

	private PlanOnly() {
	}

	static boolean applies(Situation situation, LimitSettings settings) {
		return isAfterSurgery(situation, settings) || !situation.standing().enrolled().fullyGrown();
	}

	private static boolean isAfterSurgery(Situation situation, LimitSettings settings) {
		LocalDate surgery = situation.standing().enrolled().surgeryDate();
		return surgery != null && surgery.plusDays(settings.surgeryDays()).isAfter(situation.date());
	}

	static Decision decide(Situation situation, LimitSettings settings) {
		WalkPlan plan = situation.plan();
		Reason reason = isAfterSurgery(situation, settings) ? Reason.ONLY_THE_PLAN_AFTER_SURGERY
				: Reason.ONLY_THE_PLAN_WHILE_GROWING;
		return switch (situation.alarm()) {
			case NONE ->
				new Decision(plan.planMinutes(), plan.walksPerDay(), plan.planMinutes(), Advice.USUAL, List.of(reason));
			case SAME_DAY -> new Decision(plan.minMinutes(), plan.walksPerDay(), plan.minMinutes(), Advice.CALL_CLINIC,
					List.of(Reason.CALL_THE_CLINIC_TODAY, reason));
			case EMERGENCY -> new Decision(plan.minMinutes(), plan.walksPerDay(), plan.minMinutes(), Advice.EMERGENCY,
					List.of(Reason.EMERGENCY_SIGNS, reason));
		};
	}

}

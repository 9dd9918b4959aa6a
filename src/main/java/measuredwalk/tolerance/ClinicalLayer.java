package measuredwalk.tolerance;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Puts the clinical limits over the belief's dose: the tightest of them binds, none goes
 * under the floor, and small changes are not made.
 */
final class ClinicalLayer {

	private final LimitSettings settings;

	private final RestAfterBadMorning rest;

	private final List<Limit> limits;

	ClinicalLayer(LimitSettings settings) {
		this.settings = settings;
		this.rest = new RestAfterBadMorning(settings);
		this.limits = List.of(this.rest, new WayBack(settings), new ClearMorningsFirst(settings), new Growth(settings),
				new NewMedicineHold(settings), new WeeklyTotal(settings), new PeakDay(settings),
				new PlanCeiling(settings), new ClinicMaximum(), new Silence());
	}

	Decision decide(Situation situation) {
		if (PlanOnly.applies(situation, this.settings)) {
			return PlanOnly.decide(situation, this.settings);
		}
		List<Binding> binding = binding(situation);
		double most = binding.isEmpty() ? situation.plan().maxMinutes() : binding.get(0).most();
		double floor = Math.min(floor(situation), situation.plan().maxMinutes());
		boolean resting = this.rest.most(situation) < Limit.NONE;
		double whole = whole(Math.min(situation.modelMinutes(), most), situation.plan().maxMinutes(), floor);
		boolean held = !resting && isSmall(whole, situation.suggested(1))
				&& situation.suggested(1) <= Math.min(most, situation.plan().maxMinutes())
				&& situation.suggested(1) >= floor;
		double minutes = held ? situation.suggested(1) : whole;
		List<Reason> reasons = new ArrayList<>(binding.stream().map(Binding::reason).toList());
		if (minutes > Math.min(situation.modelMinutes(), most) + 1) {
			reasons.add(0,
					(minutes <= Math.ceil(situation.plan().minMinutes())) ? Reason.CLINIC_MINIMUM : Reason.LEAST_WALK);
		}
		if (!resting && settled(situation) > minutes) {
			reasons.add(Reason.CAREFUL_WITH_A_NEW_DOG);
		}
		if (held && whole != minutes) {
			reasons.add(Reason.SMALL_CHANGE_NOT_MADE);
		}
		int walks = resting ? RestAfterBadMorning.walks(situation.plan()) : situation.plan().walksPerDay();
		Advice advice = resting ? Advice.REST : Advice.USUAL;
		return alarmed(situation, new Decision(minutes, walks, Math.max(minutes, most), advice, reasons));
	}

	/** What a dog that is not new would be given under the same limits. */
	private double settled(Situation situation) {
		double minutes = situation.settledMinutes();
		for (Limit limit : this.limits) {
			minutes = Math.min(minutes, limit.most(situation));
		}
		return (situation.settledMinutes() > situation.modelMinutes()) ? Math.rint(minutes) : 0;
	}

	private record Binding(double most, Reason reason) {
	}

	private List<Binding> binding(Situation situation) {
		return this.limits.stream()
			.map((limit) -> new Binding(limit.most(situation), limit.reason()))
			.filter((limit) -> limit.most() < situation.modelMinutes())
			.sorted(Comparator.comparingDouble(Binding::most))
			.toList();
	}

	private double floor(Situation situation) {
		double byTolerance = Math
			.rint(Math.min(this.settings.floorMost(), this.settings.floorShare() * situation.medianMinutes()));
		if (!situation.heardSinceYesterday()) {
			byTolerance = Math.min(byTolerance, situation.suggested(1));
		}
		return Math.max(situation.plan().minMinutes(), Math.max(this.settings.floorMinutes(), byTolerance));
	}

	private static double whole(double wanted, double maximum, double floor) {
		double whole = Math.min(Math.rint(wanted), Math.floor(maximum));
		return (whole >= floor) ? whole : floor;
	}

	private boolean isSmall(double minutes, double yesterday) {
		return Math.abs(minutes - yesterday) < Math.max(this.settings.smallestStep(),
				this.settings.smallestShare() * yesterday);
	}

	private Decision alarmed(Situation situation, Decision decision) {
		return switch (situation.alarm()) {
			case NONE -> decision;
			case SAME_DAY -> alarmed(decision, Advice.CALL_CLINIC, Reason.CALL_THE_CLINIC_TODAY,
					this.settings.restShare() * decision.minutes());
			case EMERGENCY -> alarmed(decision, Advice.EMERGENCY, Reason.EMERGENCY_SIGNS, this.settings.floorMinutes());
		};
	}

	private Decision alarmed(Decision decision, Advice advice, Reason reason, double most) {
		double minutes = Math.min(decision.minutes(), Math.max(this.settings.floorMinutes(), Math.floor(most)));
		List<Reason> reasons = new ArrayList<>(decision.reasons());
		reasons.add(0, reason);
		return new Decision(minutes, decision.walks(), minutes, advice, reasons);
	}

}

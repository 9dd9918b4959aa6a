package measuredwalk.escalation.delivery;

import java.util.List;

import measuredwalk.escalation.EscalationRule;
import measuredwalk.escalation.EscalationRules;
import measuredwalk.signs.Basis;
import measuredwalk.signs.Grade;
import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Component;

/** When an alert that nobody has seen is told again, to be shown. */
@Component
@Order(2)
class ShownRoundRules implements EscalationRules {

	private static final Basis PRACTICE = Basis.of(Grade.C, "common practice, no source");

	@Override
	public List<EscalationRule> all() {
		return List.of(
				new EscalationRule("unseen-emergency",
						"told again after " + RoundPlan.EMERGENCY_PAUSE.toMinutes()
								+ " minutes, and to the next address",
						PRACTICE),
				new EscalationRule("unseen-same-day-alert",
						"told again after " + RoundPlan.SAME_DAY_OPEN_MINUTES
								+ " minutes of opening, and to the next address",
						PRACTICE),
				new EscalationRule("review-out-of-hours", "told when the clinic opens", PRACTICE));
	}

}

package measuredwalk.escalation;

import java.util.List;

/** Rules of one kind about what the clinic hears of and when. */
public interface EscalationRules {

	/**
	 * The rules.
	 * @return the rules, in the order in which they are shown
	 */
	List<EscalationRule> all();

}

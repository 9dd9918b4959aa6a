package measuredwalk.escalation.course;

import java.util.List;

import measuredwalk.escalation.Evidence;

/**
 * What a rule found.
 *
 * @param reason why the clinic should look, in words of the trade
 * @param measure how bad it is, to tell whether it has become worse
 * @param evidence the owner's words that it rests on, oldest first
 */
public record Finding(String reason, double measure, List<Evidence> evidence) {

	private static final int MOST_EVIDENCE = 6;

	public Finding {
		evidence = List.copyOf(evidence.subList(Math.max(0, evidence.size() - MOST_EVIDENCE), evidence.size()));
	}

}

package measuredwalk.care;

import java.util.List;
import java.util.Map;

import measuredwalk.conversations.Phrase;
import org.springframework.stereotype.Component;

/** {@code /today} and {@code /why}. */
@Component
class TodayTalk {

	private final SuggestionWords suggestions;

	private final EvidenceWords evidence;

	private final GentleIdeas ideas;

	TodayTalk(SuggestionWords suggestions, EvidenceWords evidence, GentleIdeas ideas) {
		this.suggestions = suggestions;
		this.evidence = evidence;
		this.ideas = ideas;
	}

	void today(Turn turn, Reply reply) {
		reply.say(turn.named(this.suggestions.today(turn.dog())));
		reply.say(Phrase.IF_WRONG, Map.of("dog", turn.dog().name()));
		this.ideas.sayIfWalksAreCut(turn);
	}

	void why(Turn turn, Reply reply) {
		String reasons = String.join("\n", this.suggestions.reasons(turn.dog()));
		reply.say(Phrase.WHY, Map.of("reasons", turn.named(reasons)));
		List<String> sentences = this.evidence.sentences(turn.dog());
		if (!sentences.isEmpty()) {
			reply.say(String.join("\n", sentences));
		}
	}

}

package measuredwalk.conversations;

import java.util.List;
import java.util.Set;

import org.jspecify.annotations.Nullable;

/**
 * A step of a conversation: one question.
 *
 * @param id the step's name, unique in its conversation
 * @param settles what an answer may settle; the step is skipped when all of it is settled
 * @param onlyIf what must hold for it to be asked, or null
 * @param ask the question
 * @param askAgain the question in other words, after an answer that was not understood
 * @param choices answers to offer
 */
record Step(String id, Set<Slot> settles, @Nullable Circumstance onlyIf, String ask, String askAgain,
		List<String> choices) {

	Step {
		settles = Set.copyOf(settles);
		choices = List.copyOf(choices);
	}

	boolean worthAsking(Set<Slot> settled, Set<Circumstance> circumstances) {
		return !settled.containsAll(this.settles) && (this.onlyIf == null || circumstances.contains(this.onlyIf));
	}

}

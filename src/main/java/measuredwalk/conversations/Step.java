package measuredwalk.conversations;

import java.util.List;
import java.util.Set;

import org.jspecify.annotations.Nullable;

/**
 * A step of a conversation: one question.
 *
 * @param id the step's name, unique in its conversation
 * @param settles what an answer may settle; any one of these answers the question
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
		return this.settles.stream().noneMatch(settled::contains)
				&& (this.onlyIf == null || circumstances.contains(this.onlyIf));
	}

	boolean asks(Step other) {
		return this.id.equals(other.id) && this.settles.equals(other.settles) && this.onlyIf == other.onlyIf
				&& this.choices.size() == other.choices.size()
				&& Texts.places(this.ask).equals(Texts.places(other.ask));
	}

}

package measuredwalk.conversations;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.Set;

import measuredwalk.reading.Question;

/**
 * A conversation as it is written in its file.
 *
 * @param id its name
 * @param version raised by its writer when steps change
 * @param reads what kind of question its answers are read as
 * @param closesAfter how long an unanswered conversation stays open
 * @param steps its questions in order
 */
record Script(String id, int version, Question reads, Duration closesAfter, List<Step> steps) {

	/**
	 * More questions than this, and people stop answering: common practice, no source.
	 */
	static final int MOST_QUESTIONS = 3;

	Script {
		steps = List.copyOf(steps);
	}

	Optional<Step> step(String id) {
		return this.steps.stream().filter((step) -> step.id().equals(id)).findFirst();
	}

	Optional<Step> next(Set<Slot> settled, Set<Circumstance> circumstances, int questionsAsked) {
		if (questionsAsked >= MOST_QUESTIONS) {
			return Optional.empty();
		}
		return this.steps.stream().filter((step) -> step.worthAsking(settled, circumstances)).findFirst();
	}

	/** Whether another language's script asks the same things, in other words. */
	boolean hasStepsOf(Script other) {
		boolean same = other.steps.size() == this.steps.size() && other.version == this.version
				&& other.reads == this.reads;
		for (int index = 0; same && index < this.steps.size(); index++) {
			same = this.steps.get(index).asks(other.steps.get(index));
		}
		return same;
	}

}

package measuredwalk.reading.amount;

import measuredwalk.reading.context.Annotation;
import measuredwalk.reading.lexicon.Category;
import measuredwalk.reading.lexicon.Mention;
import measuredwalk.reading.lexicon.WordClass;
import measuredwalk.reading.observation.Observation;
import measuredwalk.reading.words.Words;

/** The clause and the sentence that a quantity stands in. */
final class Neighbours {

	private final Annotation annotation;

	private final Words words;

	/** Words between the verb of walking and its amount at most, and one more. */
	private static final int REACH_WALKED = 3;

	Neighbours(Annotation annotation) {
		this.annotation = annotation;
		this.words = annotation.words();
	}

	int clause(Placed placed) {
		return this.annotation.clauses().of(word(placed));
	}

	int clause(Observation seen) {
		return this.annotation.clauses().of(seen.mention().from());
	}

	int sentence(Placed placed) {
		return this.annotation.clauses().sentenceOf(word(placed));
	}

	int sentence(Observation seen) {
		return this.annotation.clauses().sentenceOf(seen.mention().from());
	}

	/** Whether its sentence tells of a walk. */
	boolean isWalkInSentence(Placed placed) {
		for (Mention walk : this.annotation.mentions(Category.WALK)) {
			if (this.annotation.clauses().sentenceOf(walk.from()) == sentence(placed)) {
				return true;
			}
		}
		return false;
	}

	/** Whether it is what a walk took: 'did thirty minutes', 'we go 45 minutes'. */
	boolean isWalked(Placed placed) {
		for (Mention walk : this.annotation.mentions(Category.WALK)) {
			if (walk.to() <= placed.from() && placed.from() - walk.to() < REACH_WALKED
					&& this.annotation.clauses().of(walk.from()) == clause(placed)
					&& this.annotation.is(walk.from() - 1, WordClass.PRONOUN)) {
				return true;
			}
		}
		return false;
	}

	/** Whether its sentence is a question. */
	boolean isAsked(Placed placed) {
		return this.words.markBefore(this.annotation.clauses().sentenceEnd(word(placed))) == '?';
	}

	private int word(Placed placed) {
		return Math.min(placed.from(), this.words.size() - 1);
	}

}

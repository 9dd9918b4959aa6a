package measuredwalk.reading.amount;

import java.util.ArrayList;
import java.util.List;

import measuredwalk.reading.context.Annotation;
import measuredwalk.reading.lexicon.Category;
import measuredwalk.reading.lexicon.Mention;
import measuredwalk.reading.quantity.BareNumber;
import measuredwalk.reading.quantity.Duration;
import measuredwalk.reading.quantity.TimeRange;
import measuredwalk.reading.words.Words;

/**
 * Tells which bare numbers are loose. Whoever writes 'minutes' once writes it again for
 * the next walk, or tells the numbers together; a number that stands alone elsewhere in
 * such a message counts or names something else ('size 4', 'pulse 96').
 */
final class LooseNumbers {

	/**
	 * Words between two numbers that are told together: '10 mins this morning and 15'.
	 */
	private static final int MOST_WORDS_BETWEEN = 4;

	/** Cues that tie a number to the walk. */
	private static final List<String> TIES = List.of("total", "result", "return", "another", "guess", "each", "taken",
			"walk-noun", "minus", "spread", "wrong", "whole");

	private final Annotation annotation;

	private final Words words;

	private final RoleCues cues;

	private final Neighbours near;

	private final List<Placed> amounts = new ArrayList<>();

	private boolean lengthTold;

	LooseNumbers(Annotation annotation, RoleCues cues) {
		this.annotation = annotation;
		this.words = annotation.words();
		this.cues = cues;
		this.near = new Neighbours(annotation);
	}

	/** To be told once: everything that was found. */
	void among(List<Placed> placed) {
		for (Placed each : placed) {
			boolean length = each.quantity() instanceof Duration || each.quantity() instanceof TimeRange;
			this.lengthTold |= length;
			if (length || each.quantity() instanceof BareNumber) {
				this.amounts.add(each);
			}
		}
	}

	boolean has(Placed placed) {
		boolean alone = this.words.isBreakBefore(placed.from()) && this.words.isBreakBefore(placed.to())
				&& this.words.markBefore(placed.from()) != '(';
		return this.lengthTold && !alone && !isToldTogether(placed) && !isTied(placed) && !isWalkInClause(placed);
	}

	private boolean isToldTogether(Placed placed) {
		for (Placed other : this.amounts) {
			int gap = (other.from() < placed.from()) ? placed.from() - other.to() : other.from() - placed.to();
			if (other != placed && gap <= MOST_WORDS_BETWEEN
					&& this.near.sentence(other) == this.near.sentence(placed)) {
				return true;
			}
		}
		return false;
	}

	private boolean isTied(Placed placed) {
		for (String tie : TIES) {
			if (this.cues.has(tie, placed)) {
				return true;
			}
		}
		for (Mention part : this.cues.of("several")) {
			if (this.annotation.clauses().of(part.from()) == this.near.clause(placed)) {
				return true;
			}
		}
		return this.words.is(placed.to(), "not") || !this.cues.of("corrected").isEmpty()
				|| !this.annotation.mentions(Category.CORRECTION).isEmpty();
	}

	private boolean isWalkInClause(Placed placed) {
		for (Mention walk : this.annotation.mentions(Category.WALK)) {
			if (this.annotation.clauses().of(walk.from()) == this.near.clause(placed)) {
				return true;
			}
		}
		return false;
	}

}

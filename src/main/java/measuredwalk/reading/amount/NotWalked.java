package measuredwalk.reading.amount;

import measuredwalk.reading.Question;
import measuredwalk.reading.context.Annotation;
import measuredwalk.reading.context.Context;
import measuredwalk.reading.context.ContextReader;
import measuredwalk.reading.lexicon.Category;
import measuredwalk.reading.lexicon.Mention;
import measuredwalk.reading.quantity.Distance;
import measuredwalk.reading.words.Words;

/**
 * Tells which amounts are of something else than this dog's walk: a plan, a rest, a past
 * walk, one that was only thought of, another dog's.
 */
final class NotWalked {

	/** 'met 4 other dogs'. */
	private static final int MOST_WORDS_BETWEEN = 2;

	private final Annotation annotation;

	private final Words words;

	private final RoleCues cues;

	private final ContextReader contexts;

	private final Question question;

	private final boolean signs;

	NotWalked(Annotation annotation, RoleCues cues, Question question, boolean signs) {
		this.annotation = annotation;
		this.words = annotation.words();
		this.cues = cues;
		this.contexts = new ContextReader(annotation);
		this.question = question;
		this.signs = signs;
	}

	boolean has(Placed placed, boolean only) {
		boolean planned = this.cues.has("planned", placed) && !this.cues.before("taken", placed);
		boolean dayBefore = !only && this.cues.before("yesterday", placed);
		return planned || dayBefore || this.cues.has("elsewhere", placed) || this.cues.before("part", placed)
				|| isOfOther(placed) || isSince(placed) || isAskedFor(placed) || isAsked(placed) || isUnreal(placed);
	}

	/** 'in March he did 60', 'we would have done an hour'. */
	private boolean isUnreal(Placed placed) {
		if (placed.quantity() instanceof Distance || placed.from() >= this.words.size()) {
			return false;
		}
		Context context = this.contexts.of(placed.from(), placed.to());
		return (context.historical() && !context.recent()) || isThoughtOf(placed);
	}

	/** 'would have done', 'could have managed', 'wish we did', 'if'. */
	private boolean isThoughtOf(Placed placed) {
		int clause = this.annotation.clauses().of(placed.from());
		return this.cues.of("unreal")
			.stream()
			.anyMatch((cue) -> cue.to() <= placed.from() && this.annotation.clauses().of(cue.from()) == clause);
	}

	/** 'since one hour', 'come up in an hour'. */
	private boolean isSince(Placed placed) {
		boolean follows = !this.words.isBreakBefore(placed.from());
		return (follows && this.words.is(placed.from() - 1, "since"))
				|| (this.words.is(placed.from() - 1, "in") && this.question == Question.ANY && this.signs)
				|| (this.words.is(placed.to(), "since") && !this.words.isBreakBefore(placed.to()))
				|| (this.question == Question.ANY && this.words.is(placed.to(), "after"))
				|| (this.question != Question.MORNING && this.words.is(placed.to(), "later") && this.signs);
	}

	/** 'can we go up to 25?' */
	private boolean isAskedFor(Placed placed) {
		Neighbours near = new Neighbours(this.annotation);
		return near.isAsked(placed) && this.cues.of("asking")
			.stream()
			.anyMatch((cue) -> cue.to() <= placed.from()
					&& this.annotation.clauses().sentenceOf(cue.from()) == near.sentence(placed));
	}

	private boolean isAsked(Placed placed) {
		return this.words.is(placed.from() - 1, "in") && this.cues.before("asked", placed);
	}

	/**
	 * 'the collie did 30', 'my husband took the spaniel for 40': the other dog's walk.
	 */
	private boolean isOfOther(Placed placed) {
		int clause = this.annotation.clauses().of(Math.min(placed.from(), this.words.size() - 1));
		for (Mention other : this.annotation.mentions(Category.OTHER)) {
			if (other.value().equals("dog") && other.to() <= placed.from()
					&& this.annotation.clauses().of(other.from()) == clause && isSubject(other, placed.from())) {
				return true;
			}
		}
		return false;
	}

	/** Not 'with the collie', nor 'met a lab and he did 20'. */
	private boolean isSubject(Mention other, int from) {
		boolean company = this.cues.of("company")
			.stream()
			.anyMatch((cue) -> cue.to() <= other.from() && other.from() - cue.to() <= MOST_WORDS_BETWEEN
					&& this.annotation.clauses().of(cue.from()) == this.annotation.clauses().of(other.from()));
		for (int at = other.to(); at < from && !company; at++) {
			Mention cover = this.annotation.coverOf(at);
			if (this.words.is(at, "we") || this.words.is(at, "he") || this.words.is(at, "she")
					|| this.words.is(at, "and") || (cover != null && cover.category() == Category.SELF)) {
				return false;
			}
		}
		return !company;
	}

}

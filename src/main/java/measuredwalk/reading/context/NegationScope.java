package measuredwalk.reading.context;

import measuredwalk.reading.lexicon.Category;
import measuredwalk.reading.lexicon.Mention;
import measuredwalk.reading.lexicon.WordClass;
import measuredwalk.reading.words.Words;

/**
 * Whether a phrase stands in the scope of a denial. The scope runs from the cue to the
 * end of the clause, over lists joined by 'or' and 'and', and ends at terminations.
 */
final class NegationScope {

	/** What a cue makes of a phrase. */
	enum Polarity {

		ASSERTED, NEGATED, HEDGED, LESS

	}

	/** Words that a cue reaches over at most; NegEx takes five, dictation is wordier. */
	private static final int REACH = 9;

	/** Words within which 'less stiff' must go on with 'than' to compare. */
	private static final int REACH_COMPARED = 6;

	/** Words between a denied phrase and its exception at most. */
	private static final int REACH_EXCEPTION = 4;

	private final Annotation annotation;

	private final Words words;

	private final DeniedLists lists;

	private final LaterDenial later;

	NegationScope(Annotation annotation, LaterDenial later) {
		this.annotation = annotation;
		this.words = annotation.words();
		this.lists = new DeniedLists(annotation);
		this.later = later;
	}

	Polarity of(int from, int to, boolean urgent) {
		Polarity before = before(from);
		if (before == Polarity.NEGATED && (isUntil(to) || isExcepted(to))) {
			return Polarity.ASSERTED;
		}
		if (before == Polarity.NEGATED && isAsMuch(to)) {
			return Polarity.LESS;
		}
		if (before != Polarity.ASSERTED) {
			return before;
		}
		return this.later.isDenied(to, urgent) || this.later.isAnsweredNo(to) ? Polarity.NEGATED : Polarity.ASSERTED;
	}

	/** 'was not dragging it as much as last time': less, but there. */
	private boolean isAsMuch(int to) {
		for (int at = to; at <= to + 2; at++) {
			boolean as = this.words.is(at, "as") || this.words.is(at, "so") || this.words.is(at, "that");
			if (as && this.annotation.is(at + 1, WordClass.MUCH)) {
				return true;
			}
		}
		return false;
	}

	/** 'did not limp until we got home' asserts it. */
	private boolean isUntil(int to) {
		for (int at = to; at <= to + 1; at++) {
			if (this.words.is(at, "until") || this.words.is(at, "till")) {
				return true;
			}
		}
		return false;
	}

	/**
	 * 'no limp apart from the last minute' asserts it; 'no limp apart from some
	 * stiffness' does not.
	 */
	private boolean isExcepted(int to) {
		int at = to;
		while (at < this.words.size() && at <= to + REACH_EXCEPTION && !isException(at)) {
			at++;
		}
		if (at >= this.words.size() || !isException(at) || this.words.isSentenceBefore(at)) {
			return false;
		}
		for (int next = at; next < this.words.size() && !this.words.isSentenceBefore(next + 1); next++) {
			Mention cover = this.annotation.coverOf(next);
			if (cover != null && cover.category() == Category.SIGN) {
				return false;
			}
		}
		return true;
	}

	private boolean isException(int at) {
		Mention cover = this.annotation.coverOf(at);
		return cover != null && cover.from() == at && cover.category() == Category.EXCEPTION && cover.value().isEmpty();
	}

	private Polarity before(int from) {
		boolean subjectPassed = false;
		int reach = REACH;
		for (int at = from - 1; at >= 0 && reach > 0; at--, reach--) {
			if (this.words.isSentenceBefore(at + 1)
					|| (this.words.isBreakBefore(at + 1) && !this.lists.goesOn(at + 1))) {
				return Polarity.ASSERTED;
			}
			if (this.words.isBreakBefore(at + 1) && at + 1 < from) {
				reach = REACH;
			}
			Mention cover = this.annotation.coverOf(at);
			if (cover != null && cover.to() > from && this.annotation.is(at, WordClass.DENIAL)) {
				return Polarity.NEGATED;
			}
			if (cover != null && cover.to() <= from) {
				if (isCue(cover) && !(subjectPassed && !cover.entry().has("embedding"))) {
					return polarity(cover, from);
				}
				if (cover.category() == Category.EXCEPTION || cover.category() == Category.PSEUDO_NEGATION) {
					return Polarity.ASSERTED;
				}
				reach += cover.length() - 1;
				at = cover.from();
			}
			if (this.lists.endsScope(at)) {
				return Polarity.ASSERTED;
			}
			subjectPassed |= this.annotation.is(at, WordClass.PRONOUN);
		}
		return Polarity.ASSERTED;
	}

	private static boolean isCue(Mention cover) {
		return (cover.category() == Category.NEGATION && cover.value().equals("before"))
				|| cover.category() == Category.HEDGE;
	}

	private Polarity polarity(Mention cue, int from) {
		if (cue.category() == Category.NEGATION) {
			return Polarity.NEGATED;
		}
		boolean compared = cue.value().equals("less") && isCompared(from);
		return compared ? Polarity.LESS : Polarity.HEDGED;
	}

	/** 'not as stiff as yesterday' compares; 'not as stiff' only hedges. */
	private boolean isCompared(int from) {
		for (int at = from; at < Math.min(this.words.size(), from + REACH_COMPARED); at++) {
			if (at > from && this.words.isBreakBefore(at)) {
				return false;
			}
			if (this.words.is(at, "than") || (at > from && this.words.is(at, "as"))) {
				return true;
			}
		}
		return false;
	}

}

package measuredwalk.reading.context;

import java.util.Set;

import measuredwalk.reading.lexicon.Category;
import measuredwalk.reading.lexicon.Mention;
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

	/** Words between a phrase and a denial after it at most. */
	private static final int REACH_AFTER = 6;

	/** A list joined by 'or' may be long. */
	private static final int REACH_LIST = 20;

	/** 'none of those' reaches back over a whole list. */
	private static final int REACH_ALL = 40;

	private static final Set<String> NUMBERS = Set.of("one", "two", "three", "four", "five", "six", "seven", "eight",
			"ten", "twelve", "fifteen", "twenty", "thirty", "forty", "half", "hour", "quarter", "few", "couple",
			"minute", "minutes", "mins", "min");

	private static final Set<String> SELF = Set.of("he", "she", "his", "hers", "dog");

	private static final Set<String> MUCH = Set.of("much", "bad", "badly", "often", "hard", "heavily");

	/** 'Any limp?' */
	private static final int SHORT_QUESTION = 3;

	private static final Set<String> NO = Set.of("no", "not", "nope", "nah", "none", "never", "nil");

	private static final Set<String> DENIALS = Set.of("not", "no", "never", "without", "nor");

	private static final Set<String> PRONOUNS = Set.of("he", "she", "it", "they", "we", "i");

	private static final Set<String> VERBS = Set.of("was", "is", "has", "had", "did", "does", "were", "seemed",
			"looked", "came", "got", "started", "went", "keeps", "kept", "felt", "still", "being", "keep", "threw");

	private final Annotation annotation;

	private final Words words;

	NegationScope(Annotation annotation) {
		this.annotation = annotation;
		this.words = annotation.words();
	}

	Polarity of(int from, int to, boolean urgent) {
		Polarity before = before(from);
		if (before == Polarity.NEGATED && isUntil(to)) {
			return Polarity.ASSERTED;
		}
		if (before == Polarity.NEGATED && isAsMuch(to)) {
			return Polarity.LESS;
		}
		if (before != Polarity.ASSERTED) {
			return before;
		}
		return isDeniedAfter(to, urgent) || isAnsweredNo(to) ? Polarity.NEGATED : Polarity.ASSERTED;
	}

	/** 'was not dragging it as much as last time': less, but there. */
	private boolean isAsMuch(int to) {
		for (int at = to; at <= to + 2 && at + 1 < this.words.size(); at++) {
			boolean as = this.words.is(at, "as") || this.words.is(at, "so") || this.words.is(at, "that");
			if (as && MUCH.contains(this.words.form(at + 1))) {
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

	private Polarity before(int from) {
		boolean subjectPassed = false;
		int reach = REACH;
		for (int at = from - 1; at >= 0 && reach > 0; at--, reach--) {
			if (this.words.isSentenceBefore(at + 1) || (this.words.isBreakBefore(at + 1) && !listGoesOn(at + 1))) {
				return Polarity.ASSERTED;
			}
			if (this.words.isBreakBefore(at + 1) && at + 1 < from) {
				reach = REACH;
			}
			Mention cover = this.annotation.coverOf(at);
			if (cover != null && cover.to() > from && DENIALS.contains(this.words.form(at))) {
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
			if (endsScope(at)) {
				return Polarity.ASSERTED;
			}
			subjectPassed |= PRONOUNS.contains(this.words.form(at));
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
		for (int at = from; at < Math.min(this.words.size(), from + 6); at++) {
			if (at > from && this.words.isBreakBefore(at)) {
				return false;
			}
			if (this.words.is(at, "than") || (at > from && this.words.is(at, "as"))) {
				return true;
			}
		}
		return false;
	}

	/** 'gone in five minutes' is how long it took, and no denial. */
	private boolean hasNumber(int from, int to) {
		for (int at = from; at < Math.min(to, this.words.size()); at++) {
			if (Character.isDigit(this.words.form(at).charAt(0)) || NUMBERS.contains(this.words.form(at))) {
				return true;
			}
		}
		return false;
	}

	private boolean endsScope(int at) {
		if (this.annotation.isTermination(at)) {
			return true;
		}
		String next = (at + 1 < this.words.size()) ? this.words.form(at + 1) : "";
		return this.words.is(at, "and") && (PRONOUNS.contains(next) || VERBS.contains(next));
	}

	/**
	 * After a comma the denial goes on when an 'or' follows: 'no limp, stiffness or
	 * pain'.
	 */
	private boolean listGoesOn(int after) {
		if (this.words.markBefore(after) != ',') {
			return false;
		}
		if (this.words.is(after, "or") || this.words.is(after, "nor")) {
			return true;
		}
		for (int at = after; at < Math.min(this.words.size(), after + REACH_LIST); at++) {
			if ((at > after && this.words.isSentenceBefore(at)) || this.annotation.isTermination(at)
					|| PRONOUNS.contains(this.words.form(at)) || VERBS.contains(this.words.form(at))) {
				return false;
			}
			if (this.words.is(at, "or") || this.words.is(at, "nor")) {
				return true;
			}
		}
		return false;
	}

	/**
	 * Whether a denial comes after a phrase: 'limping: none', 'stiffness has gone'.
	 * @param to index after its last word
	 * @param urgent an emergency that is 'gone' again stays one
	 * @return true when one does
	 */
	boolean isDeniedAfter(int to, boolean urgent) {
		int end = Math.min(this.words.size(), to + REACH_AFTER);
		for (int at = to; at < end; at++) {
			Mention cover = this.annotation.coverOf(at);
			if (cover != null && cover.from() == at) {
				if (cover.category() == Category.NEGATION && isAnswer(cover, to)
						&& !(cover.entry().has("eased") && (urgent || isBut(to, at)))) {
					return true;
				}
				if (cover.category() == Category.SIGN) {
					break;
				}
			}
			if (this.words.isSentenceBefore(at) && at > to && !isWholeSentence(at)) {
				break;
			}
			if (this.annotation.isTermination(at) && !this.words.is(at, "as") && !isCueNext(at + 1)) {
				return isAllTakenBack(to);
			}
		}
		return isTakenBack(to);
	}

	/** 'stiff but gone after breakfast': it was there. */
	private boolean isBut(int from, int to) {
		for (int at = from; at < to; at++) {
			if (this.words.is(at, "but")) {
				return true;
			}
		}
		return false;
	}

	/** 'Lame? Not that I could see'. */
	private boolean isAnsweredNo(int to) {
		return this.words.markBefore(to) == '?' && to < this.words.size() && NO.contains(this.words.form(to))
				&& to - this.annotation.clauses().sentenceStart(to - 1) <= SHORT_QUESTION;
	}

	/** 'I am sore, she's not'; 'my knees hurt, his don't'. */
	boolean isSelfDenied(int to) {
		for (int at = to; at <= Math.min(to + 1, this.words.size() - 3); at++) {
			boolean self = SELF.contains(this.words.form(at)) || isSelf(at);
			if (self && this.words.is(at + 2, "not") && this.words.isBreakBefore(at + 3)) {
				return true;
			}
		}
		return false;
	}

	private boolean isSelf(int at) {
		Mention cover = this.annotation.coverOf(at);
		return cover != null && cover.category() == Category.SELF;
	}

	/** 'but not any more': a denial right behind the joining word. */
	private boolean isCueNext(int at) {
		Mention cover = (at < this.words.size()) ? this.annotation.coverOf(at) : null;
		return cover != null && cover.category() == Category.NEGATION && cover.value().equals("after");
	}

	private boolean isWholeSentence(int at) {
		Mention cover = this.annotation.coverOf(at);
		return cover != null && cover.from() == at && this.words.isSentenceBefore(cover.to());
	}

	/** 'none of those' denies all that was named; 'she didn't' the sentence before. */
	private boolean isTakenBack(int to) {
		if (isAllTakenBack(to)) {
			return true;
		}
		int next = to;
		while (next < this.words.size() && !this.words.isSentenceBefore(next)) {
			next++;
		}
		return next + 2 < this.words.size() && PRONOUNS.contains(this.words.form(next))
				&& this.words.is(next + 2, "not") && this.words.isSentenceBefore(next + 3);
	}

	/** 'legs like jelly by the end though, mine not his'. */
	private boolean isAllTakenBack(int to) {
		int end = Math.min(this.words.size(), to + REACH_ALL);
		for (int at = to; at < end; at++) {
			Mention cover = this.annotation.coverOf(at);
			if (cover != null && cover.entry().has("all") && cover.category() == Category.NEGATION) {
				return true;
			}
		}
		return false;
	}

	private boolean isAnswer(Mention cue, int to) {
		if (cue.entry().has("closing") && this.words.isBreakBefore(cue.to())) {
			return true;
		}
		if (cue.value().equals("after")) {
			return !cue.entry().has("eased") || !hasNumber(to, cue.to() + REACH_AFTER);
		}
		return cue.length() == 1 && this.words.isBreakBefore(cue.from()) && this.words.isBreakBefore(cue.to())
				&& !this.words.isSentenceBefore(cue.from());
	}

}

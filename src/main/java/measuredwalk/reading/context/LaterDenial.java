package measuredwalk.reading.context;

import measuredwalk.reading.lexicon.Category;
import measuredwalk.reading.lexicon.Mention;
import measuredwalk.reading.lexicon.WordClass;
import measuredwalk.reading.words.Words;

/** Whether a denial comes after a phrase: 'limping: none', 'stiffness has gone'. */
final class LaterDenial {

	/** Words between a phrase and a denial after it at most. */
	private static final int REACH = 6;

	/** 'none of those' reaches back over a whole list. */
	private static final int REACH_ALL = 40;

	/** 'Any limp?' */
	private static final int SHORT_QUESTION = 3;

	private final Annotation annotation;

	private final Words words;

	LaterDenial(Annotation annotation) {
		this.annotation = annotation;
		this.words = annotation.words();
	}

	/**
	 * Whether a denial comes after a phrase.
	 * @param to index after its last word
	 * @param urgent an emergency that is 'gone' again stays one
	 * @return true when one does
	 */
	boolean isDenied(int to, boolean urgent) {
		int end = Math.min(this.words.size(), to + REACH);
		for (int at = to; at < end; at++) {
			if (this.words.isSentenceBefore(at) && this.words.markBefore(at) != '?' && !isWholeSentence(at)) {
				break;
			}
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
			if (this.annotation.isTermination(at) && !this.words.is(at, "as") && !isCueNext(at + 1)) {
				return isAllTakenBack(to);
			}
		}
		return isTakenBack(to);
	}

	/** 'Lame? Not that I could see'. */
	boolean isAnsweredNo(int to) {
		return this.words.markBefore(to) == '?' && this.annotation.is(to, WordClass.NO_ANSWER)
				&& to - this.annotation.clauses().sentenceStart(to - 1) <= SHORT_QUESTION;
	}

	/** 'I am sore, she's not'; 'my knees hurt, his don't'. */
	boolean isOfDogDenied(int to) {
		int last = Math.min(to + REACH, this.words.size() - 3);
		for (int at = to; at <= last && !this.words.isSentenceBefore(at + 1); at++) {
			boolean dog = this.annotation.is(at, WordClass.DOG_ITSELF) || isSelf(at);
			if (dog && this.words.is(at + 2, "not") && this.words.isBreakBefore(at + 3)) {
				return true;
			}
		}
		return false;
	}

	private boolean isSelf(int at) {
		Mention cover = this.annotation.coverOf(at);
		return cover != null && cover.category() == Category.SELF;
	}

	private boolean isAnswer(Mention cue, int to) {
		if (cue.entry().has("closing") && this.words.isBreakBefore(cue.to())) {
			return true;
		}
		if (cue.value().equals("after")) {
			return !cue.entry().has("eased") || (isWhole(cue) && !hasNumber(to, cue.to() + REACH));
		}
		boolean apart = cue.from() == to || this.words.isBreakBefore(cue.from());
		return cue.length() == 1 && apart && this.words.isBreakBefore(cue.to())
				&& !this.words.isSentenceBefore(cue.from());
	}

	/** 'gone lame' is no denial. */
	private boolean isWhole(Mention cue) {
		return this.words.isBreakBefore(cue.to()) || this.annotation.is(cue.to(), WordClass.AFTER_GONE);
	}

	/** 'gone in five minutes' is how long it took, and no denial. */
	private boolean hasNumber(int from, int to) {
		for (int at = from; at < Math.min(to, this.words.size()); at++) {
			if (Character.isDigit(this.words.form(at).charAt(0)) || this.annotation.is(at, WordClass.COUNTED)) {
				return true;
			}
		}
		return false;
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

	/** 'but not any more': a denial right behind the joining word. */
	private boolean isCueNext(int at) {
		Mention cover = (at < this.words.size()) ? this.annotation.coverOf(at) : null;
		return cover != null && cover.category() == Category.NEGATION && cover.value().equals("after");
	}

	private boolean isWholeSentence(int at) {
		Mention cover = this.annotation.coverOf(at);
		return cover != null && cover.from() == at && this.words.isSentenceBefore(cover.to());
	}

	/** 'she did not' behind the sentence, or 'none of those' behind all. */
	private boolean isTakenBack(int to) {
		if (isAllTakenBack(to)) {
			return true;
		}
		int next = to;
		while (next < this.words.size() && !this.words.isSentenceBefore(next)) {
			next++;
		}
		return this.annotation.is(next, WordClass.PRONOUN) && this.words.is(next + 2, "not")
				&& this.words.isSentenceBefore(next + 3);
	}

	/** 'none of those' denies all that was named, 'mine, not his' too. */
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

}

package measuredwalk.reading.context;

import java.util.List;

import measuredwalk.reading.lexicon.Category;
import measuredwalk.reading.lexicon.Mention;
import measuredwalk.reading.lexicon.WordClass;
import measuredwalk.reading.words.Words;

/** Whether a phrase stands in the scope of a cue of doubt, past or hypothesis. */
final class CueScope {

	/** Words that doubt reaches over at most. */
	private static final int DOUBT = 7;

	/** 'Any limp?' */
	private static final int SHORT_QUESTION = 3;

	/** Words between 'than' and what is compared with: 'than he was last week'. */
	private static final int COMPARED_WITHIN = 4;

	private final Annotation annotation;

	private final Words words;

	private final Clauses clauses;

	private final DeniedLists lists;

	private final List<Mention> uncertain;

	private final List<Mention> history;

	private final List<Mention> hypothesis;

	CueScope(Annotation annotation) {
		this.annotation = annotation;
		this.words = annotation.words();
		this.clauses = annotation.clauses();
		this.lists = new DeniedLists(annotation);
		this.uncertain = annotation.mentions(Category.UNCERTAIN);
		this.history = annotation.mentions(Category.HISTORY);
		this.hypothesis = annotation.mentions(Category.HYPOTHESIS);
	}

	boolean isUncertain(int from, int to) {
		for (Mention cue : this.uncertain) {
			if (cue.from() == to && this.words.markBefore(to) == '?') {
				return true;
			}
			if (this.clauses.of(cue.from()) == this.clauses.of(from)
					&& (cue.from() < from ? from - cue.to() <= DOUBT : cue.from() - to <= DOUBT)) {
				return true;
			}
		}
		int end = endOfClause(to);
		return end - to <= 4 && this.words.markBefore(end) == '?' && hasMildWord(from, to);
	}

	/** 'a bit lame on the right back?' is doubt, not a question to the clinic. */
	private boolean hasMildWord(int from, int to) {
		for (Mention mention : this.annotation.mentions(Category.SEVERITY)) {
			if (mention.value().equals("mild") && this.clauses.of(mention.from()) == this.clauses.of(from)) {
				return true;
			}
		}
		return to - from == 1 && this.words.isBreakBefore(from);
	}

	private int endOfClause(int to) {
		int at = to;
		while (at < this.words.size() && !this.words.isBreakBefore(at)) {
			at++;
		}
		return at;
	}

	/** Whether it was yesterday: past for a limp, near enough for a collapse. */
	boolean isRecent(int from) {
		return isPast(from, true) && !isPast(from, false);
	}

	boolean isHistorical(int from) {
		return isPast(from, true);
	}

	private boolean isPast(int from, boolean recentToo) {
		for (Mention cue : this.history) {
			if (cue.value().equals("list") && cue.to() <= from
					&& this.clauses.sentenceOf(cue.from()) == this.clauses.sentenceOf(from)
					&& !isNowBetween(cue, from)) {
				return true;
			}
			if ((recentToo || !cue.entry().is(Category.HISTORY, "recent"))
					&& this.clauses.of(cue.from()) == this.clauses.of(from) && !isNowBetween(cue, from)) {
				return true;
			}
		}
		return false;
	}

	private boolean isNowBetween(Mention cue, int from) {
		int first = Math.min(cue.from(), from);
		int last = Math.max(cue.from(), from);
		if (isCompared(cue)) {
			return true;
		}
		for (int at = first; at < last; at++) {
			Mention cover = this.annotation.coverOf(at);
			boolean now = cover != null && cover.category() == Category.NOW;
			if (now) {
				return true;
			}
		}
		return false;
	}

	/** 'slower than he was last week' tells of now. */
	private boolean isCompared(Mention cue) {
		if (this.annotation.is(cue.from() - 1, WordClass.COMPARING)) {
			return true;
		}
		for (int at = cue.from() - 1; at >= cue.from() - COMPARED_WITHIN && !this.words.isBreakBefore(at + 1); at--) {
			if (this.words.is(at, "than") || this.words.is(at, "compared")) {
				return true;
			}
		}
		return false;
	}

	boolean isHypothetical(int from, int to) {
		if (isAnsweredUnknown(to)) {
			return true;
		}
		for (Mention cue : this.hypothesis) {
			if (cue.to() <= from && this.clauses.sentenceOf(cue.from()) == this.clauses.sentenceOf(from) && isOpen(cue)
					&& reaches(cue, from)) {
				return true;
			}
		}
		return false;
	}

	/** 'Limping? I could not tell you': a short question that the writer leaves open. */
	private boolean isAnsweredUnknown(int to) {
		if (to >= this.words.size() || this.words.markBefore(to) != '?'
				|| to - this.clauses.sentenceStart(to - 1) > SHORT_QUESTION) {
			return false;
		}
		for (Mention cue : this.uncertain) {
			if (cue.value().equals("unknown") && this.clauses.sentenceOf(cue.from()) == this.clauses.sentenceOf(to)) {
				return true;
			}
		}
		return false;
	}

	private boolean isOpen(Mention cue) {
		return !cue.value().equals("opening") || this.words.isSentenceBefore(cue.from());
	}

	private boolean reaches(Mention cue, int from) {
		for (int at = cue.to(); at < from; at++) {
			if (this.words.is(at, "but") || (this.words.isBreakBefore(at) && !isListed(at))) {
				return false;
			}
		}
		return !this.words.isBreakBefore(from) || from == cue.to() || isListed(from);
	}

	/** Whether it was told of the past as a whole: 'no history of fits'. */
	boolean isOfHistory(int from) {
		for (Mention cue : this.history) {
			if (this.words.is(cue.to() - 2, "history") && this.words.is(cue.to() - 1, "of") && cue.to() <= from
					&& this.clauses.of(cue.from()) == this.clauses.of(from)) {
				return true;
			}
		}
		return false;
	}

	/** 'watching for a limp, stiffness or pain': what is listed belongs to the cue. */
	private boolean isListed(int at) {
		return this.words.is(at, "or") || this.words.is(at, "and") || this.words.markBefore(at) == ':'
				|| this.lists.goesOn(at);
	}

}

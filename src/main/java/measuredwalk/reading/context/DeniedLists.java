package measuredwalk.reading.context;

import measuredwalk.reading.lexicon.Category;
import measuredwalk.reading.lexicon.Mention;
import measuredwalk.reading.lexicon.WordClass;
import measuredwalk.reading.words.Words;

/** How far a denial goes on over a list: 'no limp, stiffness or pain'. */
final class DeniedLists {

	/** A list joined by 'or' may be long. */
	private static final int REACH = 20;

	/** Words between 'and his' and the verb at most. */
	private static final int REACH_SUBJECT = 3;

	private final Annotation annotation;

	private final Words words;

	DeniedLists(Annotation annotation) {
		this.annotation = annotation;
		this.words = annotation.words();
	}

	/** Whether a denial before a word ends at it: at 'but', and at 'and he'. */
	boolean endsScope(int at) {
		return this.annotation.isTermination(at)
				|| (this.words.is(at, "and") && (isStatement(at + 1) || isFavourable(at + 1) || isNewSubject(at + 1)));
	}

	/** 'with nothing coming up and his tummy is tight': what 'and' adds is its own. */
	private boolean isNewSubject(int at) {
		boolean possessed = this.words.is(at, "his") || this.words.is(at, "her") || this.words.is(at, "the");
		for (int next = at + 1; possessed && next <= at + REACH_SUBJECT; next++) {
			if (this.annotation.is(next, WordClass.STATING)) {
				return true;
			}
		}
		return false;
	}

	/** 'not sick and stool normal': the good news behind 'and' is not denied. */
	private boolean isFavourable(int at) {
		Mention cover = (at < this.words.size()) ? this.annotation.coverOf(at) : null;
		return cover != null && cover.category() == Category.SIGN && cover.entry().has("denied");
	}

	/** After a comma the denial goes on when an 'or' follows. */
	boolean goesOn(int after) {
		if (this.words.markBefore(after) != ',') {
			return false;
		}
		if (isOr(after)) {
			return true;
		}
		for (int at = after; at < Math.min(this.words.size(), after + REACH); at++) {
			if ((at > after && this.words.isSentenceBefore(at)) || this.annotation.isTermination(at)
					|| isStatement(at)) {
				return false;
			}
			if (isOr(at)) {
				return true;
			}
		}
		return false;
	}

	private boolean isOr(int at) {
		return this.words.is(at, "or") || this.words.is(at, "nor");
	}

	private boolean isStatement(int at) {
		return this.annotation.is(at, WordClass.PRONOUN) || this.annotation.is(at, WordClass.STATING);
	}

}

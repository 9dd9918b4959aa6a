package measuredwalk.reading.lexicon;

import java.util.Locale;

/** What kind of thing a phrase tells. */
public enum Category {

	/** A sign of the dog; the value is its code. */
	SIGN(true),
	/** A phrase that is not what it seems; it hides what it covers. */
	GUARD(true),
	/** A negation of what follows ({@code before}) or came before ({@code after}). */
	NEGATION(true),
	/** A phrase that looks like a negation of a sign and is none. */
	PSEUDO_NEGATION(true),
	/** 'hardly any', 'not so', 'less': there, and mild or less than before. */
	HEDGE(true),
	/** Words at which a negation, or another cue, ends. */
	TERMINATION(false),
	/** 'apart from': what follows a denial is asserted after all. */
	EXCEPTION(true),
	/** 'maybe', 'I think'. */
	UNCERTAIN(true),
	/** The past: 'used to', 'last year'. */
	HISTORY(true),
	/** Words that bring a past thing into the present: 'since', 'still'. */
	NOW(true),
	/** What may come: 'if', 'watching for'. */
	HYPOTHESIS(true),
	/** Another dog or a person. */
	OTHER(true),
	/** The dog in question. */
	SELF(true),
	/** How the dog was on the whole: {@code better}, {@code usual}, {@code worse}. */
	OVERALL(true),
	/** There was no walk. */
	NO_WALK(false),
	/** How long against another walk. */
	RELATIVE(false),
	/** A word for the walk itself. */
	WALK(false),
	/** What part a number plays, by the words before or after it. */
	NUMBER_CUE(false),
	/** How bad. */
	SEVERITY(false),
	/** Which side. */
	SIDE(false),
	/** Front or back leg. */
	LIMB(false),
	/** When. */
	MOMENT(false),
	/** What is changed of something told before. */
	CORRECTION(false),
	/** Yes, no, unsure. */
	ANSWER(false),
	/** A cue for the level: {@code sudden}, {@code unceasing} and the like. */
	CUE(false),
	/** One idea of the urgent rules, such as {@code gums}; the value is its name. */
	CONCEPT(false),
	/** A medicine; the value is its kind. */
	MEDICINE(false),
	/** Small talk and side matters that are understood but tell nothing. */
	CHAT(false);

	private final boolean meaning;

	Category(boolean meaning) {
		this.meaning = meaning;
	}

	/**
	 * Whether phrases of this category compete for the same words, the longest winning.
	 * @return true for meanings, false for what only qualifies them
	 */
	public boolean isMeaning() {
		return this.meaning;
	}

	/**
	 * The spelling in lexicon files.
	 * @return lower-case words joined by hyphens
	 */
	public String code() {
		return name().toLowerCase(Locale.ROOT).replace('_', '-');
	}

}

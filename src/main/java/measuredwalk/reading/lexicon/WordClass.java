package measuredwalk.reading.lexicon;

import java.util.Locale;

/**
 * Classes of single words by which the reader's own rules go, beside those that only
 * phrases use. Their words stand in {@code cues.txt} as {@code class name: words}.
 */
public enum WordClass {

	/** A number in words, or a word for minutes: 'gone in five' is how long it took. */
	COUNTED,
	/** What may follow 'gone' that denies: 'gone by lunch', but not 'gone lame'. */
	AFTER_GONE,
	/** The dog, beside its owner: 'I am sore, she is not'. */
	DOG_ITSELF,
	/** 'was not limping as much'. */
	MUCH,
	/** What answers a question with no. */
	NO_ANSWER,
	/** Words that deny what comes after them. */
	DENIAL,
	/** Who a new clause is about. */
	PRONOUN,
	/** Verbs that begin a new statement behind 'and'. */
	STATING,
	/** Words that begin a clause without any mark. */
	JOINING,
	/** Words behind 'and' that begin a clause. */
	SUBJECT,
	/** Words before another dog that was only met or seen. */
	MET,
	/** 'my son says she fell': what is told is of the dog again. */
	TELLING,
	/** What a person does who has the dog out: 'Sam took her, no limp'. */
	WALKING_DOG,
	/** He and she. */
	HE_OR_SHE,
	/** What stands for the dog in any place of a sentence. */
	DOG_PRONOUN,
	/** Small words between the writer and what the writer is. */
	LINKING,
	/** 'less than yesterday': the past is only compared with. */
	COMPARING,
	/** Words behind a verb of eating and the like that is told whole. */
	CLOSING,
	/** Words before 'back' that make it a direction. */
	MOVING,
	/** Words by which a sign, not the walk, is said to come back. */
	RETURNING,
	/** Words before 'right' that make it no side. */
	RIGHTED,
	/** Words before 'back' that make it a leg after all. */
	SIDED_BEFORE,
	/** Words behind 'back' that make it a direction. */
	ONWARD,
	/** Grades that grade only what comes after them. */
	GRADES_NEXT,
	/** What may follow a grade that comes as an afterthought. */
	AFTERTHOUGHT,
	/** A walk named by the part of the day: 'the morning one'. */
	NAMED_WALK,
	/** 'the left, no, I mean right'. */
	CORRECTING;

	/**
	 * The spelling in lexicon files.
	 * @return the class's name in angle brackets
	 */
	String code() {
		return "<" + name().toLowerCase(Locale.ROOT).replace('_', '-') + ">";
	}

}

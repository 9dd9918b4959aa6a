package measuredwalk.reading.level;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;

import measuredwalk.reading.context.Annotation;
import measuredwalk.reading.context.Clauses;
import measuredwalk.reading.lexicon.Category;
import measuredwalk.reading.lexicon.Mention;
import measuredwalk.reading.observation.Observation;
import measuredwalk.signs.SignKind;

/**
 * Tells the signs that the owner calls this dog's usual ones: 'a bit wobbly behind as
 * ever' is logged, but nobody has to act on it. Only signs that a dog may have for years
 * can be usual, and never when something sudden or worse is told in the same sentence.
 */
final class OwnUsual {

	private static final Set<SignKind> LASTING = EnumSet.of(SignKind.ATAXIA, SignKind.PARESIS,
			SignKind.HIND_LIMB_DRAGGING, SignKind.LAMENESS, SignKind.KNUCKLING, SignKind.RECUMBENCY,
			SignKind.NON_WEIGHT_BEARING, SignKind.DYSPNOEA, SignKind.VOCALISING, SignKind.PAIN, SignKind.SWELLING,
			SignKind.INCONTINENCE, SignKind.ABDOMINAL_DISTENSION);

	/** Signs that may stay the same from day to day without being an emergency. */
	private static final Set<SignKind> MILD = EnumSet.of(SignKind.ATAXIA, SignKind.PARESIS, SignKind.LAMENESS,
			SignKind.HIND_LIMB_DRAGGING, SignKind.PAIN, SignKind.INCONTINENCE);

	/** Words between a sign and its 'as ever' at most. */
	private static final int REACH = 6;

	private final Clauses clauses;

	private final List<Mention> cues;

	OwnUsual(Annotation annotation) {
		this.clauses = annotation.clauses();
		this.cues = annotation.mentions(Category.CUE);
	}

	/**
	 * Whether a sign is called usual.
	 * @param seen the sign
	 * @return true when it is
	 */
	boolean is(Observation seen) {
		SignKind kind = seen.sign().kind();
		boolean usual = (LASTING.contains(kind) && isSaid(seen, "usual"))
				|| (MILD.contains(kind) && !isForceful(seen) && isSaid(seen, "unchanged"));
		return usual && this.cues.stream().noneMatch((cue) -> cue.value().equals("change") && isInSentence(cue, seen));
	}

	/** 'the legs gave way, no change' is not calmed by its going on. */
	private static boolean isForceful(Observation seen) {
		return seen.urgent() && seen.sign().kind() != SignKind.LAMENESS;
	}

	/**
	 * 'cheerful as ever, cannot put it down' says nothing of the leg: the cue comes
	 * behind.
	 */
	private boolean isSaid(Observation seen, String value) {
		for (Mention cue : this.cues) {
			if (cue.value().equals(value) && isInSentence(cue, seen)) {
				boolean sameClause = this.clauses.of(cue.from()) == this.clauses.of(seen.mention().to() - 1);
				boolean behind = cue.from() >= seen.mention().from() && cue.from() - seen.mention().to() <= REACH;
				if (sameClause || behind) {
					return true;
				}
			}
		}
		return false;
	}

	private boolean isInSentence(Mention cue, Observation seen) {
		return this.clauses.sentenceOf(cue.from()) == this.clauses.sentenceOf(seen.mention().to() - 1);
	}

}

package measuredwalk.reading.context;

import java.util.ArrayList;
import java.util.List;

import measuredwalk.reading.lexicon.Mention;

/** Reads the context of phrases. */
public final class ContextReader {

	private final Annotation annotation;

	private final LaterDenial later;

	private final NegationScope negation;

	private final CueScope cues;

	private final SubjectScope subject;

	/**
	 * A reader for the phrases of one message.
	 * @param annotation its phrases
	 */
	public ContextReader(Annotation annotation) {
		this.annotation = annotation;
		this.later = new LaterDenial(annotation);
		this.negation = new NegationScope(annotation, this.later);
		this.cues = new CueScope(annotation);
		this.subject = new SubjectScope(annotation);
	}

	/**
	 * The context of a phrase.
	 * @param from index of its first word
	 * @param to index after its last word
	 * @return its context
	 */
	public Context of(int from, int to) {
		return of(from, to, false);
	}

	/**
	 * The context of a phrase that may tell of an emergency.
	 * @param from index of its first word
	 * @param to index after its last word
	 * @param urgent whether it does: then it is not taken back by its having gone again
	 * @return its context
	 */
	public Context of(int from, int to, boolean urgent) {
		NegationScope.Polarity polarity = this.negation.of(from, to, urgent);
		boolean negated = polarity == NegationScope.Polarity.NEGATED && !(urgent && isDenial(from));
		boolean historical = this.cues.isHistorical(from);
		boolean other = this.subject.isOther(from, to, urgent) || this.subject.isNamedAfter(to);
		if (other && this.later.isOfDogDenied(to)) {
			return new Context(true, false, false, false, false, false, false, false);
		}
		return new Context(negated, polarity == NegationScope.Polarity.HEDGED, polarity == NegationScope.Polarity.LESS,
				this.cues.isUncertain(from, to), historical && !negated, this.cues.isRecent(from),
				this.cues.isHypothetical(from, to) && !this.later.isDenied(to, urgent), other);
	}

	/**
	 * Whether a phrase is told of another dog, whoever told it.
	 * @param from index of its first word
	 * @param to index after its last word
	 * @return true when it is
	 */
	public boolean isOfAnotherDog(int from, int to) {
		return this.subject.isOtherDog(from, to);
	}

	/**
	 * 'will not put no weight on it': an emergency that is itself a denial is not undone
	 * by a second one, which dialects add for strength.
	 */
	private boolean isDenial(int from) {
		return this.annotation.words().is(from, "no") || this.annotation.words().is(from, "not")
				|| this.annotation.words().is(from, "never");
	}

	/**
	 * The context of each of some phrases.
	 * @param mentions the phrases
	 * @return their contexts, in the same order
	 */
	public List<Context> of(List<Mention> mentions) {
		List<Context> contexts = new ArrayList<>(mentions.size());
		for (Mention mention : mentions) {
			contexts.add(of(mention.from(), mention.to()));
		}
		return contexts;
	}

	Annotation annotation() {
		return this.annotation;
	}

}

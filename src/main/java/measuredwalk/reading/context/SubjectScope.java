package measuredwalk.reading.context;

import java.util.List;

import measuredwalk.reading.lexicon.Category;
import measuredwalk.reading.lexicon.Mention;
import measuredwalk.reading.lexicon.WordClass;
import measuredwalk.reading.words.Words;

/**
 * Whose sign it is. Another dog's or a person's only when that one is the subject: a sign
 * of this dog must not be lost because another is named beside it.
 */
final class SubjectScope {

	private final Annotation annotation;

	private final Words words;

	private final Clauses clauses;

	private final List<Mention> others;

	SubjectScope(Annotation annotation) {
		this.annotation = annotation;
		this.words = annotation.words();
		this.clauses = annotation.clauses();
		this.others = annotation.mentions(Category.OTHER);
	}

	/**
	 * Whether it is another's.
	 * @param from index of the phrase's first word
	 * @param to index after its last word
	 * @param urgent whether it may tell of an emergency: then a phrase that names the dog
	 * is of the dog, whoever tells it
	 * @return true when it is
	 */
	boolean isOther(int from, int to, boolean urgent) {
		return isOther(from, to, urgent, false);
	}

	/** Whether it is another dog's, whoever else is named. */
	boolean isOtherDog(int from, int to) {
		return isOther(from, to, true, true);
	}

	private boolean isOther(int from, int to, boolean urgent, boolean dogsOnly) {
		if (urgent && isSelfBetween(from, Math.min(to, this.words.size()))) {
			return false;
		}
		if (!dogsOnly && isOwnersBody(from)) {
			return true;
		}
		boolean ofDog = urgent && namesDog(from, to);
		for (int index = this.others.size() - 1; index >= 0; index--) {
			Mention other = this.others.get(index);
			if (dogsOnly && !other.value().equals("dog")) {
				continue;
			}
			if (other.from() < from && other.to() > from) {
				return true;
			}
			if (other.to() <= from && this.clauses.sentenceOf(other.from()) == this.clauses.sentenceOf(from)) {
				if (other.value().equals("human") ? !ofDog && isWriter(other, from) : reaches(other, from)) {
					return true;
				}
				if (!other.value().equals("human")) {
					return false;
				}
			}
		}
		return false;
	}

	/** 'we cannot touch him': the writer only tells of what the dog does. */
	private boolean namesDog(int from, int to) {
		for (int at = from; at < to; at++) {
			if (this.annotation.is(at, WordClass.DOG_PRONOUN)) {
				return true;
			}
		}
		return false;
	}

	/** 'my hip was playing up': the sign begins with a part of the writer's body. */
	private boolean isOwnersBody(int from) {
		return this.words.is(from - 1, "my") || this.words.is(from - 1, "your");
	}

	/** 'screaming, but that was the baby'. */
	boolean isNamedAfter(int to) {
		for (Mention other : this.others) {
			if (other.from() >= to && other.entry().has("after")
					&& this.clauses.sentenceOf(other.from()) == this.clauses.sentenceOf(to - 1)) {
				return true;
			}
			if (other.from() >= to && !other.value().equals("human") && other.from() > 1
					&& this.clauses.sentenceOf(other.from()) == this.clauses.sentenceOf(to - 1)
					&& (this.words.is(other.from() - 1, "was") || this.words.is(other.from() - 1, "is"))
					&& (this.words.is(other.from() - 2, "that") || this.words.is(other.from() - 2, "it"))) {
				return true;
			}
		}
		return false;
	}

	/** 'I was stiff' is the writer; 'I saw he was stiff' is not. */
	private boolean isWriter(Mention writer, int from) {
		if (from - writer.to() > 6) {
			return false;
		}
		for (int at = writer.to(); at < from; at++) {
			Mention cover = this.annotation.coverOf(at);
			if (cover != null && (cover.category() == Category.HYPOTHESIS
					|| (cover.category() == Category.NEGATION && cover.entry().has("embedding")))) {
				return false;
			}
			if ((this.annotation.isTermination(at) && !this.words.is(at, "who")) || this.words.isBreakBefore(at)
					|| isOfDog(at)
					|| (this.annotation.coverOf(at) == null && !this.annotation.is(at, WordClass.LINKING))) {
				return false;
			}
		}
		return !this.words.isBreakBefore(from);
	}

	private boolean isOfDog(int at) {
		Mention cover = this.annotation.coverOf(at);
		return this.annotation.is(at, WordClass.HE_OR_SHE) || this.words.is(at, "his") || this.words.is(at, "her")
				|| (cover != null && cover.category() == Category.SELF);
	}

	private boolean isSelfBetween(int from, int to) {
		for (int at = from; at < to; at++) {
			Mention cover = this.annotation.coverOf(at);
			if (cover != null && cover.category() == Category.SELF) {
				return true;
			}
		}
		return false;
	}

	private boolean reaches(Mention other, int from) {
		if (isSelfBetween(other.to(), from) || hasTheDogOut(other)) {
			return false;
		}
		boolean met = this.annotation.is(other.from() - 1, WordClass.MET) && !this.words.is(other.from(), "there");
		boolean turned = false;
		for (int at = other.to(); at < from; at++) {
			turned |= this.words.is(at, "but") || this.words.is(at, "though");
			if (this.annotation.is(at, WordClass.TELLING) && at - other.to() <= 2) {
				return this.words.is(at + 1, "hers") || this.words.is(at + 1, "theirs")
						|| (this.words.is(at + 1, "his") && this.annotation.is(at + 2, WordClass.LINKING));
			}
			if ((turned && isOfDog(at)) || (isPassedOver(other, at) && this.annotation.is(at, WordClass.HE_OR_SHE))) {
				return false;
			}
			if (met && (this.words.is(at, "and") || this.words.isBreakBefore(at))
					&& !this.annotation.is(at + 1, WordClass.HE_OR_SHE)) {
				return false;
			}
		}
		return true;
	}

	/** 'my husband walked her, 25 minutes and no limp' and 'Jim: 20' tell of the dog. */
	private boolean hasTheDogOut(Mention other) {
		if (this.words.markBefore(other.to()) == ':') {
			return true;
		}
		if (other.value().equals("dog") || !this.annotation.is(other.to(), WordClass.WALKING_DOG)) {
			return false;
		}
		return this.annotation.is(other.to() + 1, WordClass.DOG_PRONOUN) || this.words.is(other.to() + 1, "the")
				|| isOfDog(other.to() + 1);
	}

	/** 'my hip hurts, he is fine'; 'the kids came, she was slow'. */
	private boolean isPassedOver(Mention other, int at) {
		return other.value().equals("body")
				|| (other.value().equals("people") && this.clauses.of(at) != this.clauses.of(other.from()));
	}

}

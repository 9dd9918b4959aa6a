package measuredwalk.reading.level;

import java.util.Arrays;
import java.util.List;
import java.util.Set;

import measuredwalk.reading.context.Annotation;
import measuredwalk.reading.lexicon.Category;
import measuredwalk.reading.lexicon.Mention;
import measuredwalk.reading.observation.Observation;
import measuredwalk.signs.Overall;
import measuredwalk.signs.Severity;
import measuredwalk.signs.SignKind;
import org.jspecify.annotations.Nullable;

/**
 * What the level rules look at.
 *
 * @param observations the signs
 * @param acute those of them that the owner does not call the dog's usual ones
 * @param annotation the message's phrases
 * @param medications kinds of medicine that the dog gets, known or told
 * @param overall how the dog was on the whole, or null
 * @param stiffMinutes how long stiffness took to ease, in minutes, or null
 */
public record Findings(List<Observation> observations, List<Observation> acute, Annotation annotation,
		Set<String> medications, @Nullable Overall overall, @Nullable Double stiffMinutes) {

	/**
	 * Findings of a message.
	 * @param observations the signs
	 * @param annotation the message's phrases
	 * @param medications kinds of medicine that the dog gets, known or told
	 * @param overall how the dog was on the whole, or null
	 * @param stiffMinutes how long stiffness took to ease, in minutes, or null
	 * @return the findings
	 */
	public static Findings of(List<Observation> observations, Annotation annotation, Set<String> medications,
			@Nullable Overall overall, @Nullable Double stiffMinutes) {
		OwnUsual usual = new OwnUsual(annotation);
		List<Observation> acute = observations.stream()
			.filter((seen) -> seen.sign().present() && !usual.is(seen))
			.toList();
		return new Findings(observations, acute, annotation, medications, overall, stiffMinutes);
	}

	boolean has(SignKind... kinds) {
		return this.acute.stream().anyMatch((seen) -> Arrays.asList(kinds).contains(seen.sign().kind()));
	}

	boolean hasUrgent(SignKind kind) {
		return this.acute.stream().anyMatch((seen) -> seen.sign().kind() == kind && seen.urgent());
	}

	/** Whether a sign's heading carries a word such as 'spine' or 'inside'. */
	boolean hasFlag(SignKind kind, String flag) {
		return this.acute.stream().anyMatch((seen) -> seen.sign().kind() == kind && seen.mention().entry().has(flag));
	}

	boolean hasSevere(SignKind kind) {
		return this.acute.stream()
			.anyMatch((seen) -> seen.sign().kind() == kind && seen.sign().severity() == Severity.SEVERE);
	}

	boolean isClear(SignKind kind) {
		return this.acute.stream()
			.anyMatch((seen) -> seen.sign().kind() == kind && seen.sign().severity() != Severity.MILD);
	}

	/** Whether a cue such as 'suddenly' stands in the same sentence as the sign. */
	boolean hasWithCue(SignKind kind, String cue) {
		for (Observation seen : this.acute) {
			if (seen.sign().kind() == kind && cueNear(seen.mention(), cue)) {
				return true;
			}
		}
		return false;
	}

	boolean hasCue(String cue) {
		return this.annotation.mentions(Category.CUE).stream().anyMatch((mention) -> mention.value().equals(cue));
	}

	private boolean cueNear(Mention sign, String cue) {
		return this.annotation.mentions(Category.CUE)
			.stream()
			.anyMatch((mention) -> mention.value().equals(cue) && this.annotation.clauses()
				.sentenceOf(mention.from()) == this.annotation.clauses().sentenceOf(sign.from()));
	}

	boolean gets(String medicine) {
		return this.medications.contains(medicine);
	}

	/** Panting and tiredness after a walk are effort, unless they are severe. */
	boolean hasSignBeyondEffort() {
		return this.observations.stream()
			.anyMatch((seen) -> seen.sign().present() && (seen.sign().severity() == Severity.SEVERE
					|| (seen.sign().kind() != SignKind.PANTING && seen.sign().kind() != SignKind.FATIGUE)));
	}

}

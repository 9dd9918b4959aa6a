package measuredwalk.reading.level;

import java.util.Arrays;
import java.util.Set;

import measuredwalk.reading.context.Annotation;
import measuredwalk.reading.lexicon.ConceptRule;
import measuredwalk.reading.lexicon.Mention;
import measuredwalk.reading.words.Words;
import org.jspecify.annotations.Nullable;

/** How far one rule is fitted by the concepts seen so far. */
final class ConceptMatch {

	/** The last few of each concept are enough: older ones are out of reach or worse. */
	private static final int KEPT = 3;

	private static final Set<String> DENIALS = Set.of("not", "no", "never", "without", "nor");

	private static final Set<String> DEGREES = Set.of("at", "all", "very", "so", "really", "going", "gone", "any",
			"the", "a", "been", "getting", "even", "too", "that", "once", "actually");

	private final ConceptRule rule;

	private final Annotation annotation;

	private final @Nullable Mention[][] seen;

	ConceptMatch(ConceptRule rule, Annotation annotation) {
		this.rule = rule;
		this.annotation = annotation;
		this.seen = new Mention[rule.concepts().size()][KEPT];
	}

	/**
	 * Adds a concept.
	 * @param place its place in the rule
	 * @param concept the concept
	 * @return what fits the rule now, or null
	 */
	@Nullable Mention add(int place, Mention concept) {
		@Nullable Mention[] chosen = new Mention[this.seen.length];
		chosen[place] = concept;
		boolean last = !this.rule.ordered() || place == this.seen.length - 1;
		Mention match = last ? completed(this.seen.length - 1, place, chosen) : null;
		if (match != null) {
			Arrays.stream(this.seen).forEach((places) -> Arrays.fill(places, null));
			return isDeniedInside(chosen, match) ? null : match;
		}
		keep(place, concept);
		return null;
	}

	/**
	 * Fills the places from one downwards, the latest concepts first; goes back when they
	 * share words or are too far apart.
	 */
	private @Nullable Mention completed(int at, int place, @Nullable Mention[] chosen) {
		if (at < 0) {
			return match(chosen);
		}
		if (at == place) {
			return completed(at - 1, place, chosen);
		}
		for (Mention candidate : this.seen[at]) {
			if (candidate != null && isFree(candidate, chosen) && isInOrder(at, candidate, chosen)) {
				chosen[at] = candidate;
				Mention match = completed(at - 1, place, chosen);
				if (match != null) {
					return match;
				}
				chosen[at] = null;
			}
		}
		return null;
	}

	private static boolean isFree(Mention candidate, @Nullable Mention[] chosen) {
		return Arrays.stream(chosen).noneMatch((taken) -> taken != null && taken.overlaps(candidate));
	}

	private void keep(int place, Mention concept) {
		@Nullable Mention[] places = this.seen[place];
		System.arraycopy(places, 0, places, 1, KEPT - 1);
		places[0] = concept;
	}

	private boolean isInOrder(int place, Mention candidate, @Nullable Mention[] chosen) {
		Mention next = (place + 1 < chosen.length) ? chosen[place + 1] : null;
		return !this.rule.ordered() || next == null || candidate.to() <= next.from();
	}

	private @Nullable Mention match(@Nullable Mention[] chosen) {
		int from = Integer.MAX_VALUE;
		int to = 0;
		for (Mention mention : chosen) {
			if (mention != null) {
				from = Math.min(from, mention.from());
				to = Math.max(to, mention.to());
			}
		}
		boolean oneSentence = this.annotation.clauses().sentenceOf(from) == this.annotation.clauses()
			.sentenceOf(to - 1);
		return (to - from <= this.rule.span() && (oneSentence || this.rule.across()))
				? new Mention(this.rule.entry(), from, to) : null;
	}

	/** 'gums are not white': the denial stands between the concepts. */
	private boolean isDeniedInside(@Nullable Mention[] chosen, Mention match) {
		for (Mention mention : chosen) {
			if (mention != null && mention.from() > match.from() && isDenied(mention, chosen)) {
				return true;
			}
		}
		return false;
	}

	private boolean isDenied(Mention mention, @Nullable Mention[] chosen) {
		Words words = this.annotation.words();
		int at = mention.from() - 1;
		while (at > 0 && DEGREES.contains(words.form(at)) && !words.isBreakBefore(at + 1)) {
			at--;
		}
		if (at < 0 || words.isBreakBefore(at + 1) || !DENIALS.contains(words.form(at))) {
			return false;
		}
		int denial = at;
		return Arrays.stream(chosen).noneMatch((one) -> one != null && one.from() <= denial && denial < one.to());
	}

}

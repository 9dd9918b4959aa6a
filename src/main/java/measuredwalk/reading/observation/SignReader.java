package measuredwalk.reading.observation;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

import measuredwalk.reading.context.Annotation;
import measuredwalk.reading.context.Context;
import measuredwalk.reading.context.ContextReader;
import measuredwalk.reading.lexicon.Category;
import measuredwalk.reading.lexicon.Entry;
import measuredwalk.reading.lexicon.Mention;
import measuredwalk.reading.lexicon.WordClass;
import measuredwalk.signs.Coded;
import measuredwalk.signs.Limb;
import measuredwalk.signs.Severity;
import measuredwalk.signs.Sign;
import measuredwalk.signs.SignKind;
import org.jspecify.annotations.Nullable;

/** Reads the signs of a message, one for each place that tells of one. */
public final class SignReader {

	/** A sign told as part of a worse one in the same sentence is not told again. */
	private static final Map<SignKind, Set<SignKind>> PART_OF = new EnumMap<>(
			Map.of(SignKind.SWELLING, EnumSet.of(SignKind.ABDOMINAL_DISTENSION), SignKind.TREMBLING,
					EnumSet.of(SignKind.SEIZURE), SignKind.STIFFNESS, EnumSet.of(SignKind.SEIZURE), SignKind.STUMBLING,
					EnumSet.of(SignKind.COLLAPSE, SignKind.PARESIS), SignKind.LAMENESS,
					EnumSet.of(SignKind.NON_WEIGHT_BEARING, SignKind.BUNNY_HOPPING), SignKind.HIND_LIMB_DRAGGING,
					EnumSet.of(SignKind.KNUCKLING), SignKind.PANTING, EnumSet.of(SignKind.DYSPNOEA),
					SignKind.DIFFICULTY_RISING, EnumSet.of(SignKind.RECUMBENCY), SignKind.ATAXIA,
					EnumSet.of(SignKind.PARESIS), SignKind.WEIGHT_LOSS, EnumSet.of(SignKind.MUSCLE_WASTING)));

	private SignReader() {
	}

	/**
	 * The signs told of this dog, now, present and denied.
	 * @param annotation the message's phrases
	 * @param contexts the contexts they stand in
	 * @param screened emergencies found by the screen
	 * @return the signs, in order of their words
	 */
	public static List<Observation> read(Annotation annotation, ContextReader contexts, List<Mention> screened) {
		List<Mention> mentions = new ArrayList<>(annotation.mentions(Category.SIGN));
		for (Mention mention : screened) {
			if (mentions.stream()
				.noneMatch((other) -> isSame(other, mention) && !isDenialPart(other, mention, contexts))) {
				mentions.add(mention);
			}
		}
		List<Observation> observations = new ArrayList<>();
		for (Mention mention : mentions) {
			Context context = contexts.of(mention.from(), mention.to(), mention.entry().has("urgent"));
			boolean given = mention.entry().has("anyone") && !context.historical() && !context.hypothetical()
					&& !contexts.isOfAnotherDog(mention.from(), mention.to());
			boolean now = given || context.isOfThisDogNow() || (context.recent() && outlastsTheDay(mention.entry())
					&& !context.other() && !context.hypothetical());
			if (now && isComplete(annotation, mention)) {
				observations.add(observation(mention, standsAlone(annotation, mention), context));
			}
		}
		observations.removeIf((seen) -> isPartOfWorse(seen, observations, annotation));
		return new Slots(annotation).filled(observations);
	}

	/**
	 * Yesterday's emergency is told of now, and so is what has gone on since yesterday.
	 */
	private static boolean outlastsTheDay(Entry entry) {
		return entry.has("urgent") || entry.has("day") || entry.has("sudden");
	}

	/**
	 * A shaking body is part of the seizure, a swollen belly no swelling; what only eased
	 * is the sign that it stands beside.
	 */
	private static boolean isPartOfWorse(Observation seen, List<Observation> all, Annotation annotation) {
		boolean lone = seen.mention().entry().has("lone");
		Set<SignKind> worse = PART_OF.getOrDefault(seen.sign().kind(), Set.of());
		if (!seen.sign().present() || (worse.isEmpty() && !lone)) {
			return false;
		}
		int sentence = annotation.clauses().sentenceOf(seen.mention().from());
		return all.stream()
			.anyMatch((other) -> other.sign().kind() != seen.sign().kind() && other.sign().present()
					&& (lone || worse.contains(other.sign().kind()))
					&& annotation.clauses().sentenceOf(other.mention().from()) == sentence);
	}

	/** A phrase that denies a sign outright also speaks for a wider net inside it. */
	private static boolean isSame(Mention one, Mention other) {
		return one.value().equals(other.value()) && one.overlaps(other) && (one.entry().has("weak")
				|| deniesAll(one, other) || one.entry().flags().keySet().containsAll(other.entry().flags().keySet()));
	}

	/** 'not even toe touching' is one sign, not a denied 'toe touching'. */
	private static boolean isDenialPart(Mention part, Mention whole, ContextReader contexts) {
		return whole.from() < part.from() && !part.entry().has("denied")
				&& contexts.of(part.from(), part.to()).negated()
				&& !contexts.of(whole.from(), whole.to(), true).negated();
	}

	private static boolean deniesAll(Mention phrase, Mention net) {
		return phrase.entry().has("denied") && phrase.from() <= net.from() && phrase.to() >= net.to();
	}

	/** 'ate' alone tells of appetite; 'ate a shoe' does not. */
	private static boolean isComplete(Annotation annotation, Mention mention) {
		return !mention.entry().has("closing") || annotation.words().isBreakBefore(mention.to())
				|| annotation.is(mention.to(), WordClass.CLOSING);
	}

	/**
	 * Whether a denial before a phrase is not of it: 'no limp no sitting', 'is not sick
	 * and his stool is normal'.
	 */
	private static boolean standsAlone(Annotation annotation, Mention mention) {
		return annotation.is(mention.from(), WordClass.DENIAL)
				|| (mention.entry().has("denied") && annotation.words().is(mention.from() - 1, "and"));
	}

	private static Observation observation(Mention mention, boolean denying, Context context) {
		Entry entry = mention.entry();
		// 'no limp no sitting' denies each: the first denial is not of the second one.
		boolean twice = context.negated() && denying;
		boolean present = entry.has("denied") == (context.negated() && !twice)
				|| (entry.has("denied") && context.hedged());
		Severity severity = present ? coded(Severity.class, entry.flag("severity")) : null;
		if (present && severity == null && (context.hedged() || context.uncertain())) {
			severity = Severity.MILD;
		}
		Limb limb = present ? coded(Limb.class, entry.flag("limb")) : null;
		SignKind kind = Coded.of(SignKind.class, entry.value());
		Sign sign = new Sign(kind, present, severity, null, limb, null, null);
		return new Observation(sign, mention, context, present && entry.has("urgent"));
	}

	private static <E extends Enum<E> & Coded> @Nullable E coded(Class<E> vocabulary, @Nullable String code) {
		return (code == null) ? null : Coded.of(vocabulary, code);
	}

}

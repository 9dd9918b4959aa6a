package measuredwalk.reading.observation;

import java.util.ArrayList;
import java.util.List;

import measuredwalk.reading.context.Annotation;
import measuredwalk.reading.context.Context;
import measuredwalk.reading.context.ContextReader;
import measuredwalk.reading.lexicon.Category;
import measuredwalk.reading.lexicon.Entry;
import measuredwalk.reading.lexicon.Mention;
import measuredwalk.signs.Coded;
import measuredwalk.signs.Limb;
import measuredwalk.signs.Severity;
import measuredwalk.signs.Sign;
import measuredwalk.signs.SignKind;
import org.jspecify.annotations.Nullable;

/** Reads the signs of a message, one for each place that tells of one. */
public final class SignReader {

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
		mentions.addAll(screened);
		List<Observation> observations = new ArrayList<>();
		for (Mention mention : mentions) {
			Context context = contexts.of(mention.from(), mention.to());
			if (context.isOfThisDogNow()) {
				observations.add(observation(mention, context));
			}
		}
		return new Slots(annotation).filled(observations);
	}

	private static Observation observation(Mention mention, Context context) {
		Entry entry = mention.entry();
		boolean present = entry.has("denied") == context.negated() || (entry.has("denied") && context.hedged());
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

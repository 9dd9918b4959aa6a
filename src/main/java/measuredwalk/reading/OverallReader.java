package measuredwalk.reading;

import java.util.List;

import measuredwalk.reading.context.Annotation;
import measuredwalk.reading.context.Context;
import measuredwalk.reading.context.ContextReader;
import measuredwalk.reading.lexicon.Category;
import measuredwalk.reading.lexicon.Mention;
import measuredwalk.reading.observation.Observation;
import measuredwalk.signs.Coded;
import measuredwalk.signs.Overall;
import org.jspecify.annotations.Nullable;

/** Reads how the dog was on the whole, against its own usual. */
final class OverallReader {

	private OverallReader() {
	}

	static @Nullable Overall read(Annotation annotation, ContextReader contexts, List<Observation> observations,
			boolean relative) {
		Overall told = null;
		boolean compared = false;
		for (Mention mention : annotation.mentions(Category.OVERALL)) {
			if ((relative && isOfWalk(annotation, mention)) || !isWhole(annotation, mention)) {
				continue;
			}
			compared |= mention.entry().has("same");
			Overall each = overall(mention, contexts.of(mention.from(), mention.to()));
			if (each != null && (told == null || each != Overall.USUAL)) {
				told = each;
			}
		}
		for (Observation seen : observations) {
			if (seen.context().less()) {
				return Overall.BETTER;
			}
			String flag = seen.mention().entry().flag("overall");
			told = (flag == null) ? told : Coded.of(Overall.class, flag);
		}
		if (told == Overall.USUAL && observations.stream().anyMatch(Observation::urgent)) {
			return null;
		}
		boolean shown = observations.stream().anyMatch((seen) -> seen.sign().present());
		return (told == Overall.USUAL && shown && !compared) ? null : told;
	}

	/** 'same' tells of the dog only when it is all that is said. */
	private static boolean isWhole(Annotation annotation, Mention mention) {
		return !mention.entry().has("alone")
				|| (annotation.words().isBreakBefore(mention.from()) && annotation.words().isBreakBefore(mention.to()));
	}

	/** 'the same as yesterday' told the walk's length, not how the dog was. */
	private static boolean isOfWalk(Annotation annotation, Mention mention) {
		return mention.entry().has("same")
				|| annotation.mentions(Category.RELATIVE).stream().anyMatch(mention::overlaps);
	}

	private static @Nullable Overall overall(Mention mention, Context context) {
		if (!context.isOfThisDogNow()) {
			return null;
		}
		Overall told = Coded.of(Overall.class, mention.value());
		if (!context.negated()) {
			return told;
		}
		if (mention.entry().has("same") || mention.length() > 1) {
			return null;
		}
		return (told == Overall.WORSE) ? Overall.USUAL : Overall.WORSE;
	}

}

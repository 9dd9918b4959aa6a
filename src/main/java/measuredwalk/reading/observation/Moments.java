package measuredwalk.reading.observation;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;

import measuredwalk.reading.context.Annotation;
import measuredwalk.reading.lexicon.Category;
import measuredwalk.reading.lexicon.Mention;
import measuredwalk.reading.lexicon.WordClass;
import measuredwalk.reading.words.Words;
import measuredwalk.signs.Coded;
import measuredwalk.signs.Moment;
import measuredwalk.signs.Sign;

/** Gives signs when they were seen. */
final class Moments {

	private static final Set<Moment> DAY_PARTS = EnumSet.of(Moment.MORNING, Moment.EVENING, Moment.NIGHT);

	private final Annotation annotation;

	private final Words words;

	private final Nearness nearness;

	Moments(Annotation annotation, Nearness nearness) {
		this.annotation = annotation;
		this.words = annotation.words();
		this.nearness = nearness;
	}

	void give(List<Observation> observations, Mention mention) {
		if ((mention.entry().has("weak") && !isClosing(mention)) || isSince(mention) || isFine(mention, observations)) {
			return;
		}
		int best = nearest(observations, mention);
		if (best < 0 || isOfWalk(mention, observations.get(best).mention())) {
			return;
		}
		Sign sign = observations.get(best).sign();
		if (sign.when() == null) {
			observations.set(best, observations.get(best).with(at(sign, mention)));
		}
	}

	private static Sign at(Sign sign, Mention mention) {
		return new Sign(sign.kind(), sign.present(), sign.severity(), sign.side(), sign.limb(),
				Coded.of(Moment.class, mention.value()),
				mention.entry().has("immediate") ? Double.valueOf(0) : sign.onsetMinute());
	}

	private int nearest(List<Observation> observations, Mention mention) {
		int best = -1;
		int nearest = Integer.MAX_VALUE;
		for (int index = 0; index < observations.size(); index++) {
			if (observations.get(index).sign().present()) {
				int distance = this.nearness.distance(observations.get(index).mention(), mention);
				if (distance < nearest) {
					best = index;
					nearest = distance;
				}
			}
		}
		return best;
	}

	/** '20 mins this morning, bit slow': the time of day is the walk's. */
	private boolean isOfWalk(Mention mention, Mention sign) {
		if (!DAY_PARTS.contains(Coded.of(Moment.class, mention.value()))) {
			return false;
		}
		int clause = this.annotation.clauses().of(mention.from());
		boolean numbered = false;
		for (int at = 0; at < this.words.size(); at++) {
			boolean outside = at < mention.from() || at >= mention.to();
			numbered |= outside && this.annotation.clauses().of(at) == clause
					&& (Character.isDigit(this.words.form(at).charAt(0)) || this.words.is(at, "minutes"));
		}
		boolean apart = clause != this.annotation.clauses().of(sign.from());
		return (apart && numbered) || this.annotation.is(mention.to(), WordClass.NAMED_WALK);
	}

	/** 'fine at the start, limped later': the part of the walk without the sign. */
	private boolean isFine(Mention mention, List<Observation> observations) {
		int clause = this.annotation.clauses().of(mention.from());
		return this.annotation.mentions(Category.NUMBER_CUE)
			.stream()
			.anyMatch((cue) -> cue.value().equals("fine") && this.annotation.clauses().of(cue.from()) == clause)
				&& observations.stream()
					.noneMatch((seen) -> this.annotation.clauses().of(seen.mention().from()) == clause);
	}

	/** 'since this morning' is now. */
	private boolean isSince(Mention mention) {
		return this.words.is(mention.from() - 1, "since")
				|| (this.words.is(mention.from() - 2, "since") && this.words.is(mention.from() - 1, "yesterday"));
	}

	private boolean isClosing(Mention mention) {
		return this.words.isBreakBefore(mention.to()) || this.words.is(mention.to(), "was")
				|| this.words.is(mention.to(), "and");
	}

}

package measuredwalk.reading.observation;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

import measuredwalk.reading.context.Annotation;
import measuredwalk.reading.context.Clauses;
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

	private final List<Mention> given = new ArrayList<>();

	private final Map<Mention, Integer> distances = new HashMap<>();

	Moments(Annotation annotation, Nearness nearness) {
		this.annotation = annotation;
		this.words = annotation.words();
		this.nearness = nearness;
	}

	void give(List<Observation> observations, Mention mention) {
		if (isIdle(mention) || isFine(mention, observations)) {
			return;
		}
		int best = -1;
		int nearest = Integer.MAX_VALUE;
		for (int index = 0; index < observations.size(); index++) {
			int distance = distance(observations.get(index), mention);
			if (distance < nearest) {
				best = index;
				nearest = distance;
			}
		}
		if (best < 0) {
			this.given.add(mention);
		}
		else if (!isOfWalk(mention, observations.get(best).mention()) && fits(mention, observations.get(best))) {
			this.given.add(mention);
			set(observations, best, mention, nearest);
		}
	}

	/** 'from about 3' is an hour of the night only when the dog was restless. */
	private static boolean fits(Mention mention, Observation observation) {
		String kind = mention.entry().flag("of");
		return kind == null || kind.equals(observation.sign().kind().code());
	}

	/** A denied sign is dated only in its own clause: 'no limp this morning'. */
	private int distance(Observation observation, Mention mention) {
		boolean near = observation.sign().present() || isInClause(observation, mention);
		return near ? this.nearness.distance(observation.mention(), mention) : Integer.MAX_VALUE;
	}

	/** Of two moments the nearer one counts, and of equally near ones the first. */
	private void set(List<Observation> observations, int index, Mention mention, int distance) {
		Observation observation = observations.get(index);
		int before = this.distances.getOrDefault(observation.mention(), Integer.MAX_VALUE);
		if (distance < before && (observation.sign().when() == null || before != Integer.MAX_VALUE)) {
			this.distances.put(observation.mention(), distance);
			observations.set(index, observation.with(at(observation.sign(), mention)));
		}
	}

	/**
	 * Gives a moment to the other signs that it dates: 'rough night, whining and pacing'
	 * dates both, and so does 'panting and pacing last night'.
	 */
	void spread(List<Observation> observations) {
		for (Mention moment : this.given) {
			boolean opening = observations.stream().noneMatch((seen) -> isBefore(seen, moment));
			for (int index = 0; index < observations.size(); index++) {
				Observation seen = observations.get(index);
				boolean dated = isInClause(seen, moment) || (seen.sign().present() && isInSentence(seen, moment)
						&& (opening || goesOn(moment, seen)) && !isOfWalk(moment, seen)) || isBothDenied(seen, moment);
				if (seen.sign().when() == null && dated && !isMomentBetween(seen.mention(), moment)) {
					observations.set(index, seen.with(at(seen.sign(), moment)));
				}
			}
		}
	}

	/** 'whining overnight and he was restless': the night goes on to the next sign. */
	private boolean goesOn(Mention moment, Observation seen) {
		if (!DAY_PARTS.contains(Coded.of(Moment.class, moment.value())) || seen.mention().from() < moment.to()) {
			return false;
		}
		for (int at = moment.to(); at < seen.mention().from(); at++) {
			if (this.words.is(at, "but") || this.words.is(at, "though") || isNow(at)) {
				return false;
			}
		}
		return true;
	}

	private boolean isNow(int at) {
		Mention cover = this.annotation.coverOf(at);
		return cover != null && cover.category() == Category.NOW;
	}

	/**
	 * 'no crying and no pacing in the night': what 'and' joins was denied of one time.
	 */
	private boolean isBothDenied(Observation seen, Mention moment) {
		return !seen.sign().present() && seen.mention().to() < moment.from() && isInSentence(seen, moment)
				&& !this.words.isBreakBefore(moment.from()) && isUnbroken(seen.mention().to(), moment.from());
	}

	private boolean isUnbroken(int from, int to) {
		for (int at = from; at < to; at++) {
			if (this.words.isBreakBefore(at) || this.words.is(at, "but")) {
				return false;
			}
		}
		return true;
	}

	private boolean isOfWalk(Mention moment, Observation seen) {
		return isOfWalk(moment, seen.mention());
	}

	private boolean isBefore(Observation seen, Mention moment) {
		return isInSentence(seen, moment) && seen.mention().from() < moment.from();
	}

	private boolean isInSentence(Observation seen, Mention moment) {
		Clauses clauses = this.annotation.clauses();
		return clauses.sentenceOf(seen.mention().from()) == clauses.sentenceOf(moment.from());
	}

	private boolean isInClause(Observation seen, Mention moment) {
		Clauses clauses = this.annotation.clauses();
		return clauses.of(seen.mention().to() - 1) == clauses.of(moment.from());
	}

	private boolean isMomentBetween(Mention sign, Mention moment) {
		int from = Math.min(sign.from(), moment.from());
		int to = Math.max(sign.to(), moment.to());
		return this.given.stream().anyMatch((other) -> other != moment && other.from() >= from && other.to() <= to);
	}

	private static Sign at(Sign sign, Mention mention) {
		boolean immediate = sign.present() && mention.entry().has("immediate");
		return new Sign(sign.kind(), sign.present(), sign.severity(), sign.side(), sign.limb(),
				Coded.of(Moment.class, mention.value()), immediate ? Double.valueOf(0) : sign.onsetMinute());
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

	/**
	 * 'after' alone, 'came in' in mid-sentence, 'since this morning' and 'the limp came
	 * back' date nothing.
	 */
	private boolean isIdle(Mention mention) {
		if (this.annotation.is(mention.from(), WordClass.RETURNING) && this.words.is(mention.to() - 1, "back")
				&& this.annotation.mentions(Category.SIGN).stream().anyMatch((sign) -> sign.to() == mention.from())) {
			return true;
		}
		return (mention.entry().has("weak") && !isClosing(mention)) || isSince(mention)
				|| (mention.entry().has("opening") && !this.words.isBreakBefore(mention.from()));
	}

	/** 'since this morning' is now; 'since last night' was seen then as well. */
	private boolean isSince(Mention mention) {
		return (this.words.is(mention.from() - 1, "since") && !this.words.is(mention.from(), "last"))
				|| (this.words.is(mention.from() - 2, "since") && this.words.is(mention.from() - 1, "yesterday"));
	}

	private boolean isClosing(Mention mention) {
		return this.words.isBreakBefore(mention.to()) || this.words.is(mention.to(), "was")
				|| this.words.is(mention.to(), "and") || this.annotation.is(mention.to(), WordClass.JOINING)
				|| this.annotation.is(mention.to(), WordClass.AFTERTHOUGHT);
	}

}

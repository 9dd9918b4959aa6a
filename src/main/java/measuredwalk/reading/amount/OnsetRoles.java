package measuredwalk.reading.amount;

import java.util.List;
import java.util.Set;

import measuredwalk.reading.context.Annotation;
import measuredwalk.reading.context.Clauses;
import measuredwalk.reading.observation.Observation;
import measuredwalk.reading.words.Words;
import org.jspecify.annotations.Nullable;

/** Tells which numbers say when on the walk a sign was first seen. */
final class OnsetRoles {

	/** Clauses between a sign and its minute: 'a hitch, back right, 20 min in'. */
	private static final int MOST_CLAUSES = 3;

	private final Words words;

	private final Clauses clauses;

	/** Between 'half way' and the length of the walk. */
	private static final Set<String> HALVED = Set.of("round", "through", "into", "of", "along", "the", "a", "our",
			"his", "her", "that");

	private final Neighbours near;

	private final RoleCues cues;

	private final List<Observation> observations;

	OnsetRoles(Annotation annotation, RoleCues cues, List<Observation> observations) {
		this.words = annotation.words();
		this.clauses = annotation.clauses();
		this.near = new Neighbours(annotation);
		this.cues = cues;
		this.observations = observations;
	}

	/** Whether the words alone say that a number is a minute of the walk. */
	boolean isTold(Placed placed) {
		return isFromEnd(placed) || isStrong(placed) || this.cues.before("first", placed);
	}

	/** 'at the 9 minute mark', where no sign was made out. */
	boolean isMoment(Placed placed) {
		return this.cues.after("moment", placed);
	}

	/** 'limped after half a mile': where it began, and no length of the walk. */
	boolean isPlace(Placed placed) {
		return (this.cues.before("onset", placed) || this.cues.before("first", placed) || isFromEnd(placed))
				&& hasSignNear(placed, true);
	}

	/** The part of a number among the minutes of the walk, or null when it has none. */
	@Nullable Role of(Placed placed) {
		if (isHalved(placed)) {
			return null;
		}
		if (isFromEnd(placed)) {
			return Role.FROM_END;
		}
		if (this.cues.before("first", placed)) {
			return isFineUntil(placed) ? Role.ONSET : Role.NONE;
		}
		if (isStrong(placed) && hasSignAround(placed)) {
			return Role.ONSET;
		}
		if (this.cues.before("until", placed) && isSignNext(placed) && !this.words.isSentenceBefore(placed.to())) {
			return Role.ONSET;
		}
		if (this.cues.before("loosened", placed) || isWhole(placed)) {
			return null;
		}
		boolean weak = this.cues.before("onset", placed) && hasSignNear(placed, true);
		boolean up = this.cues.after("up-onset", placed) && isSignBehind(placed);
		return (weak || up || (isListed(placed) && hasSignNear(placed, false))) ? Role.ONSET : null;
	}

	/** 'half way round the 20': the number is the whole, and the half is the onset. */
	private boolean isHalved(Placed placed) {
		int at = placed.from() - 1;
		while (at > 0 && HALVED.contains(this.words.form(at))) {
			at--;
		}
		return at < placed.from() - 1 && (this.words.is(at, "halfway") || this.words.is(at, "midway")
				|| (this.words.is(at, "way") && this.words.is(at - 1, "half")));
	}

	private boolean isFromEnd(Placed placed) {
		return this.cues.has("from-end", placed);
	}

	private boolean isStrong(Placed placed) {
		return (this.cues.has("strong-onset", placed) || this.cues.over("not-yet", placed)) && !isWhole(placed);
	}

	/** 'after his 40 mins', 'back from a 20 minute walk': the length of it all. */
	private boolean isWhole(Placed placed) {
		return (this.cues.before("whole", placed) && !this.cues.over("whole", placed))
				|| this.cues.after("walk-noun", placed);
	}

	/** 'fine for the first 10 then slowed': nothing in its clause, a sign behind it. */
	private boolean isFineUntil(Placed placed) {
		int clause = this.near.clause(placed);
		boolean fine = this.cues.of("fine").stream().anyMatch((cue) -> this.clauses.of(cue.from()) == clause);
		return fine && isSignNext(placed);
	}

	/** A sign in one of the two clauses that follow. */
	private boolean isSignNext(Placed placed) {
		int clause = this.near.clause(placed);
		for (Observation seen : this.observations) {
			int other = this.clauses.of(seen.mention().from());
			if (seen.sign().present() && other > clause && other <= clause + 2) {
				return true;
			}
		}
		return false;
	}

	/** The 19 of 'sat at 11, 19 and 27'. */
	private boolean isListed(Placed placed) {
		for (int at = placed.from() - 1; at >= 0; at--) {
			if (this.words.is(at, "at") || this.words.is(at, "after")) {
				return true;
			}
			if (!Character.isDigit(this.words.form(at).charAt(0)) && !this.words.is(at, "and")
					&& !this.words.is(at, "again")) {
				return false;
			}
		}
		return false;
	}

	/** 'ten minutes up the lane he sat': in its own clause, behind it. */
	private boolean isSignBehind(Placed placed) {
		return this.observations.stream()
			.anyMatch((seen) -> seen.sign().present() && seen.mention().from() >= placed.to()
					&& this.near.clause(seen) == this.near.clause(placed));
	}

	private boolean hasSignAround(Placed placed) {
		int clause = this.near.clause(placed);
		return this.observations.stream()
			.anyMatch((seen) -> Math.abs(this.clauses.of(seen.mention().from()) - clause) <= MOST_CLAUSES);
	}

	/** A sign in the same clause, the next one (ahead) or one of those before. */
	private boolean hasSignNear(Placed placed, boolean ahead) {
		int clause = this.near.clause(placed);
		for (Observation seen : this.observations) {
			int other = this.clauses.of(seen.mention().from());
			boolean sentence = this.near.sentence(placed) == this.clauses.sentenceOf(seen.mention().from());
			boolean reached = ahead ? other == clause + 1 : (other < clause && other >= clause - MOST_CLAUSES);
			if (seen.sign().present() && (other == clause || (sentence && reached))) {
				return true;
			}
		}
		return false;
	}

}

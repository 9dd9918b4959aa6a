package measuredwalk.reading.amount;

import java.util.List;
import java.util.Set;

import measuredwalk.reading.Question;
import measuredwalk.reading.context.Annotation;
import measuredwalk.reading.lexicon.Category;
import measuredwalk.reading.lexicon.Mention;
import measuredwalk.reading.observation.Observation;
import measuredwalk.reading.quantity.BareNumber;
import measuredwalk.reading.quantity.Distance;
import measuredwalk.reading.quantity.Duration;
import measuredwalk.reading.quantity.Quantity;
import measuredwalk.reading.words.Words;
import measuredwalk.signs.SignKind;

/** Finds the part that a number plays, from the words around it. */
final class NumberRoles {

	/** A bare number above this is no minutes of a walk. */
	private static final double MOST_MINUTES = 180;

	/** 'a foot of snow' is no walk. */
	private static final double LEAST_METRES = 5;

	/** A bare number below this counts something else. */
	private static final double FEWEST_MINUTES = 3;

	/** Half a day; longer is no walk but a time since. */
	private static final double MOST_SECONDS = 12 * 3600.0;

	private static final Set<String> PLANNED = Set.of("supposed", "aim", "aiming", "aimed", "plan", "planned",
			"planning", "target", "allowed", "goal", "recommended", "limit", "maximum", "hoping", "wanted", "intended",
			"intending", "tomorrow", "instead", "gonna", "usually", "normally", "yesterday", "used");

	private static final Set<String> ASKED = Set.of("ask", "remind", "text", "message", "ring", "call", "tell", "try",
			"later", "back");

	private static final Set<String> ELSEWHERE = Set.of("nap", "slept", "sleep", "asleep", "drive", "drove", "waited",
			"waiting", "wait", "phone", "queue", "bench", "snooze", "car", "bus", "train", "appointment", "film",
			"call", "rest", "rested", "ago", "late", "early", "degrees", "tablet", "tablets", "pill", "pills", "old",
			"chat", "chatting", "talking", "pressing", "dinosaurs");

	private static final Set<String> PART = Set.of("including", "includes", "included", "plus");

	private static final Set<String> MORE = Set.of("longer", "more", "extra", "further");

	private static final Set<String> LESS = Set.of("shorter", "less", "fewer", "under", "short", "quicker");

	private static final Set<String> ONSET_BEFORE = Set.of("after", "at", "by", "from", "with", "minute");

	private static final Set<String> ONSET_AFTER = Set.of("in", "into", "gone", "onward", "onwards");

	private static final Set<String> CLOSING = Set.of("not", "and", "today", "each", "or", "ish", "but", "all", "he",
			"she", "with", "first", "this", "tonight", "last", "after", "then", "before", "there", "back", "i", "we",
			"round", "on", "in", "when", "so", "because", "again", "altogether", "total", "lol", "no", "it", "at", "by",
			"over", "around", "together", "though", "apiece", "max", "tops", "easy", "gentle", "slow", "until", "till",
			"to", "of", "for", "outside", "only", "just", "if", "once", "was", "along", "down", "up", "gone", "onward",
			"onwards", "full", "yards");

	private static final Set<String> NUMBERED = Set.of("number", "no", "bus", "age", "aged", "is", "the", "page",
			"flat", "room", "gate", "route", "platform", "block", "road", "lane", "street", "channel", "since",
			"before", "weighs", "weight", "weighed", "kilos", "all", "turned", "stage", "step", "goes", "took",
			"second", "third", "this", "that", "which", "last", "other");

	private static final Set<String> TOTAL = Set.of("total", "altogether", "overall", "told", "full");

	private static final Set<String> EASED = Set.of("eased", "ease", "gone", "wore", "worn", "off", "loosen",
			"loosened", "loosening", "until", "till", "before", "took", "take", "takes", "needed", "need", "after",
			"for", "fine", "subsided", "settled", "walked", "walking", "walks", "later", "going", "kinks", "limber",
			"clear", "cleared", "passed", "moving", "warm", "warmed", "about", "only", "lasted", "lasting", "then",
			"least", "or");

	private final Annotation annotation;

	private final Words words;

	private final Neighbours near;

	private final Question question;

	private final List<Observation> observations;

	NumberRoles(Annotation annotation, Question question, List<Observation> observations) {
		this.annotation = annotation;
		this.words = annotation.words();
		this.near = new Neighbours(annotation);
		this.question = question;
		this.observations = observations;
	}

	Role of(Placed placed) {
		Quantity quantity = placed.quantity();
		if (quantity instanceof Distance distance) {
			boolean walked = distance.metres().value() >= LEAST_METRES;
			return (!walked || isElsewhere(placed)) ? Role.NONE : Role.WALK;
		}
		if (quantity instanceof Duration duration) {
			double seconds = duration.seconds().value();
			return (seconds < 60 || seconds > MOST_SECONDS) ? Role.NONE : timed(placed);
		}
		if (quantity instanceof BareNumber number) {
			return isMinutes(number, placed) ? timed(placed) : Role.NONE;
		}
		return Role.NONE;
	}

	private Role timed(Placed placed) {
		if (this.near.after(placed, MORE, 1) || this.near.after(placed, LESS, 1)) {
			return Role.OFFSET;
		}
		if (isElsewhere(placed)) {
			return Role.NONE;
		}
		if (isStiffness(placed)) {
			return Role.STIFFNESS;
		}
		if (isLast(placed)) {
			return Role.FROM_END;
		}
		if (isFirst(placed)) {
			return Role.NONE;
		}
		if (isOnset(placed)) {
			return Role.ONSET;
		}
		boolean inAll = this.words.is(placed.to(), "in")
				&& (this.words.is(placed.to() + 1, "all") || this.words.is(placed.to() + 1, "total"));
		boolean total = inAll || this.near.after(placed, TOTAL, 1) || this.near.before(placed, TOTAL, 2);
		if (this.question != Question.WALK && !total && !isWalkTold(placed)) {
			return Role.NONE;
		}
		return total ? Role.TOTAL : Role.WALK;
	}

	private boolean isElsewhere(Placed placed) {
		return this.near.before(placed, PLANNED, 5) || this.near.after(placed, ELSEWHERE, 2)
				|| this.near.before(placed, ELSEWHERE, 2) || this.near.before(placed, PART, 2) || isOfOther(placed)
				|| isMeant(placed) || isSince(placed) || isAsked(placed);
	}

	/** 'it was meant to be 25'; 'meant 25' is a correction. */
	private boolean isMeant(Placed placed) {
		return this.near.before(placed, Set.of("meant"), 4) && this.near.before(placed, Set.of("to"), 3);
	}

	/** 'since one hour', 'come up in an hour'. */
	private boolean isSince(Placed placed) {
		return this.words.is(placed.from() - 1, "since")
				|| (this.words.is(placed.from() - 1, "in") && this.question == Question.ANY
						&& !this.observations.isEmpty())
				|| (this.words.is(placed.to(), "since") && !this.words.isBreakBefore(placed.to()))
				|| (this.question == Question.ANY && this.words.is(placed.to(), "after"))
				|| (this.question != Question.MORNING && this.words.is(placed.to(), "later"));
	}

	private boolean isAsked(Placed placed) {
		return this.words.is(placed.from() - 1, "in") && this.near.before(placed, ASKED, 4);
	}

	/** Out of the blue a length of time is a walk's only when a walk is told of. */
	private boolean isWalkTold(Placed placed) {
		for (Mention walk : this.annotation.mentions(Category.WALK)) {
			if (this.annotation.clauses().sentenceOf(walk.from()) == this.near.sentence(placed)) {
				return true;
			}
		}
		return this.question == Question.ANY && this.observations.stream().noneMatch(Observation::urgent)
				&& !isQuestion(placed) && !(placed.quantity() instanceof BareNumber) && minutes(placed.quantity()) >= 5;
	}

	private boolean isQuestion(Placed placed) {
		int end = this.annotation.clauses().sentenceEnd(Math.min(placed.from(), this.words.size() - 1));
		return this.words.markBefore(end) == '?';
	}

	/** 'then the collie 30': the other dog's walk. */
	private boolean isOfOther(Placed placed) {
		for (Mention other : this.annotation.mentions(Category.OTHER)) {
			if (!other.value().equals("human") && !other.entry().has("name") && other.to() == placed.from()
					&& this.words.is(other.from() - 1, "then")) {
				return true;
			}
		}
		return false;
	}

	private boolean isStiffness(Placed placed) {
		if (this.question != Question.MORNING) {
			return false;
		}
		boolean stiff = this.observations.stream()
			.anyMatch((seen) -> seen.sign().present() && (seen.sign().kind() == SignKind.STIFFNESS
					|| seen.sign().kind() == SignKind.DIFFICULTY_RISING || seen.sign().kind() == SignKind.LAMENESS));
		return stiff && (placed.quantity() instanceof Duration || this.near.before(placed, EASED, 2)
				|| this.near.after(placed, Set.of("loosen", "ease", "limber", "go", "get"), 2)
				|| this.words.is(placed.from() - 1, "in"));
	}

	private boolean isLast(Placed placed) {
		return this.words.is(placed.from() - 1, "last") || this.words.is(placed.from() - 1, "final");
	}

	private boolean isFirst(Placed placed) {
		return this.words.is(placed.from() - 1, "first");
	}

	private boolean isOnset(Placed placed) {
		boolean before = this.near.before(placed, ONSET_BEFORE, 1);
		boolean after = placed.to() < this.words.size() && !this.words.isBreakBefore(placed.to())
				&& ONSET_AFTER.contains(this.words.form(placed.to())) && !this.words.is(placed.to() + 1, "hand")
				&& !this.words.is(placed.to() + 1, "the") && !this.words.is(placed.to() + 1, "all")
				&& !this.words.is(placed.to() + 1, "total");
		boolean upThe = this.words.is(placed.to(), "up") && this.words.is(placed.to() + 1, "the");
		return (before && hasSignNear(placed, true)) || (isListedOnset(placed) && hasSignNear(placed, false))
				|| ((after || upThe) && hasSignNear(placed, false));
	}

	/** The 19 of 'sat at 11, 19 and 27'. */
	private boolean isListedOnset(Placed placed) {
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

	/** A sign in the same clause, the next one (ahead) or one of those before. */
	private boolean hasSignNear(Placed placed, boolean ahead) {
		int clause = this.near.clause(placed);
		for (Observation seen : this.observations) {
			int other = this.annotation.clauses().of(seen.mention().from());
			boolean sentence = this.near.sentence(placed) == this.annotation.clauses()
				.sentenceOf(seen.mention().from());
			boolean reached = ahead ? other == clause + 1 : (other < clause && other >= clause - 3);
			if (seen.sign().present() && (other == clause || (sentence && reached))) {
				return true;
			}
		}
		return false;
	}

	private boolean isMinutes(BareNumber number, Placed placed) {
		double value = number.amount().value();
		if (value < FEWEST_MINUTES || value > MOST_MINUTES
				|| (this.question == Question.ANY && !isWalkNear(placed) && !isCorrected(placed))) {
			return false;
		}
		if (this.question == Question.MORNING) {
			return isStiffness(placed);
		}
		return isAtEdge(placed);
	}

	/**
	 * A bare number answers the question when it ends a clause or what follows is small.
	 */
	private boolean isAtEdge(Placed placed) {
		boolean closing = this.words.isBreakBefore(placed.to()) || CLOSING.contains(this.words.form(placed.to()));
		boolean numbered = placed.from() > 0 && !this.words.isBreakBefore(placed.from())
				&& NUMBERED.contains(this.words.form(placed.from() - 1));
		return closing && !numbered;
	}

	private boolean isCorrected(Placed placed) {
		return this.words.is(placed.to(), "not") || !this.annotation.mentions(Category.CORRECTION).isEmpty();
	}

	private boolean isWalkNear(Placed placed) {
		for (Mention walk : this.annotation.mentions(Category.WALK)) {
			if (this.annotation.clauses().sentenceOf(walk.from()) == this.near.sentence(placed)) {
				return true;
			}
		}
		return false;
	}

	static double minutes(Quantity quantity) {
		if (quantity instanceof Duration duration) {
			return duration.seconds().value() / 60;
		}
		return (quantity instanceof BareNumber number) ? number.amount().value() : Double.NaN;
	}

	/** So many minutes longer, or below zero shorter. */
	double offset(Placed placed) {
		double minutes = minutes(placed.quantity());
		return this.near.after(placed, LESS, 1) ? -minutes : minutes;
	}

}

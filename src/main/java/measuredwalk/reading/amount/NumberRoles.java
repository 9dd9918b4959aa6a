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

	private static final Set<String> PLANNED = Set.of("meant", "supposed", "aim", "aiming", "aimed", "plan", "planned",
			"planning", "going", "will", "target", "allowed", "goal", "recommended", "limit", "maximum", "hoping",
			"wanted", "intended", "intending", "tomorrow", "should");

	private static final Set<String> ELSEWHERE = Set.of("nap", "slept", "sleep", "asleep", "drive", "drove", "waited",
			"waiting", "wait", "phone", "queue", "bench", "snooze", "car", "bus", "train", "appointment", "film",
			"call", "rest", "rested", "ago", "late", "early", "later", "degrees", "tablet", "tablets", "pill", "pills",
			"old", "chat", "chatting", "talking", "including", "pressing", "hold");

	private static final Set<String> MORE = Set.of("longer", "more", "extra", "further");

	private static final Set<String> LESS = Set.of("shorter", "less", "fewer", "under", "short", "quicker");

	private static final Set<String> ONSET_BEFORE = Set.of("after", "at", "by", "from", "until", "till", "past",
			"around");

	private static final Set<String> TOTAL = Set.of("total", "altogether", "overall", "all");

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
		if (quantity instanceof Distance) {
			return isElsewhere(placed) ? Role.NONE : Role.WALK;
		}
		if (quantity instanceof Duration duration) {
			return (duration.seconds().value() < 60) ? Role.NONE : timed(placed);
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
		if (this.question == Question.MORNING && this.annotation.mentions(Category.WALK).isEmpty()) {
			return Role.NONE;
		}
		return this.near.after(placed, TOTAL, 1) || this.near.before(placed, TOTAL, 2) ? Role.TOTAL : Role.WALK;
	}

	private boolean isElsewhere(Placed placed) {
		return this.near.inClause(placed, PLANNED) || this.near.after(placed, ELSEWHERE, 2)
				|| this.near.before(placed, ELSEWHERE, 2) || isOfOther(placed);
	}

	/** 'then the collie 30': the other dog's walk. */
	private boolean isOfOther(Placed placed) {
		for (Mention other : this.annotation.mentions(Category.OTHER)) {
			if (!other.value().equals("human") && other.to() == placed.from()) {
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
		return stiff && (this.near.inClause(placed, EASED) || this.near.isAlone(placed)
				|| this.near.after(placed, EASED, 3));
	}

	private boolean isLast(Placed placed) {
		return this.words.is(placed.from() - 1, "last") || this.words.is(placed.from() - 1, "final");
	}

	private boolean isFirst(Placed placed) {
		return this.words.is(placed.from() - 1, "first");
	}

	private boolean isOnset(Placed placed) {
		boolean cue = this.near.before(placed, ONSET_BEFORE, 1) || this.words.is(placed.to(), "in")
				|| this.words.is(placed.to(), "into");
		return cue && hasSignNear(placed);
	}

	private boolean hasSignNear(Placed placed) {
		int clause = this.near.clause(placed);
		for (Observation seen : this.observations) {
			int other = this.annotation.clauses().of(seen.mention().from());
			if (other == clause || (other == clause + 1
					&& this.near.sentence(placed) == this.annotation.clauses().sentenceOf(seen.mention().from())
					&& seen.mention().from() > placed.to())) {
				return true;
			}
		}
		return false;
	}

	private boolean isMinutes(BareNumber number, Placed placed) {
		double value = number.amount().value();
		if (value < 1 || value > MOST_MINUTES || this.question == Question.ANY && !isWalkNear(placed)) {
			return false;
		}
		if (this.question == Question.MORNING) {
			return false;
		}
		return isAtEdge(placed) || isWalkNear(placed);
	}

	/**
	 * A bare number answers the question when it ends or opens a clause, or stands alone.
	 */
	private boolean isAtEdge(Placed placed) {
		boolean closing = this.words.isBreakBefore(placed.to()) || this.words.is(placed.to(), "not")
				|| this.words.is(placed.to(), "and") || this.words.is(placed.to(), "today")
				|| this.words.is(placed.to(), "each") || this.words.is(placed.to(), "or")
				|| this.words.is(placed.to(), "ish") || this.words.is(placed.to(), "but")
				|| this.words.is(placed.to(), "all") || this.words.is(placed.to(), "he")
				|| this.words.is(placed.to(), "she") || this.words.is(placed.to(), "with");
		return closing && !isHouseNumber(placed);
	}

	private boolean isHouseNumber(Placed placed) {
		return this.words.is(placed.from() - 1, "number") || this.words.is(placed.from() - 1, "no")
				|| this.words.is(placed.from() - 1, "bus") || this.words.is(placed.from() - 1, "age")
				|| this.words.is(placed.from() - 1, "is") || this.words.is(placed.from() - 1, "the");
	}

	private boolean isWalkNear(Placed placed) {
		for (Mention walk : this.annotation.mentions(Category.WALK)) {
			if (this.annotation.clauses().of(walk.from()) == this.near.clause(placed)) {
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

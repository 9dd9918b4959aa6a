package measuredwalk.reading.amount;

import java.time.LocalDateTime;
import java.util.List;
import java.util.Set;

import measuredwalk.reading.Question;
import measuredwalk.reading.Token;
import measuredwalk.reading.context.Annotation;
import measuredwalk.reading.lexicon.Category;
import measuredwalk.reading.observation.Observation;
import measuredwalk.reading.quantity.BareNumber;
import measuredwalk.reading.quantity.ClockTime;
import measuredwalk.reading.quantity.Quantities;
import measuredwalk.reading.quantity.Quantity;
import measuredwalk.reading.words.Words;
import org.jspecify.annotations.Nullable;

/** '15 tonight' and 'sat at 11' look like hours, but answer how long. */
final class ClockOrMinutes {

	/** Words that begin a part of the day behind a number. */
	private static final Set<String> DAY_PART = Set.of("tonight", "this", "at", "in", "on", "last");

	private final Annotation annotation;

	private final Words words;

	private final RoleCues cues;

	private final Question question;

	private final List<Observation> observations;

	private final LocalDateTime now;

	ClockOrMinutes(Annotation annotation, RoleCues cues, Question question, List<Observation> observations,
			LocalDateTime now) {
		this.annotation = annotation;
		this.words = annotation.words();
		this.cues = cues;
		this.question = question;
		this.observations = observations;
		this.now = now;
	}

	Quantity meant(Quantity quantity, int from, int to) {
		if (!(quantity instanceof ClockTime time) || this.question != Question.WALK) {
			return quantity;
		}
		int end = dayPartStart(from, to);
		if (!time.bare() && end == to && isFigures(from, to)) {
			return quantity;
		}
		Placed placed = new Placed(quantity, from, to);
		boolean hour = this.cues.before("sure-hour", placed)
				|| (this.cues.before("clock-hour", placed) && !isBesideSign(from));
		BareNumber number = hour ? null : number(from, end);
		return (number == null) ? quantity : number;
	}

	private boolean isFigures(int from, int to) {
		for (int at = from; at < to; at++) {
			if (Character.isDigit(this.words.form(at).charAt(0))) {
				return true;
			}
		}
		return false;
	}

	/** The index of 'tonight', 'this morning', 'at dinnertime' in a time, or its end. */
	private int dayPartStart(int from, int to) {
		for (int at = from + 1; at < to; at++) {
			if (DAY_PART.contains(this.words.form(at))) {
				return at;
			}
		}
		return to;
	}

	/** The plain number that these words are, or null when they are more than that. */
	private @Nullable BareNumber number(int from, int to) {
		List<Token> tokens = this.words.tokens().subList(this.words.token(from), this.words.token(to - 1) + 1);
		List<Quantity> told = Quantities.in(tokens, this.now);
		return (told.size() == 1 && told.get(0) instanceof BareNumber number
				&& BareAnswers.mayBeMinutes(number.amount().value())) ? number : null;
	}

	/** In the clause of a sign, or in the next one when that tells of nothing else. */
	private boolean isBesideSign(int word) {
		int clause = this.annotation.clauses().of(word);
		boolean walk = this.annotation.mentions(Category.WALK)
			.stream()
			.anyMatch((mention) -> this.annotation.clauses().of(mention.from()) == clause);
		return this.observations.stream()
			.map((seen) -> clause - this.annotation.clauses().of(seen.mention().from()))
			.anyMatch((clauses) -> clauses == 0 || (clauses == 1 && !walk));
	}

}

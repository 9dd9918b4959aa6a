package measuredwalk.reading.amount;

import java.util.List;

import measuredwalk.reading.Question;
import measuredwalk.reading.context.Annotation;
import measuredwalk.reading.lexicon.Category;
import measuredwalk.reading.observation.Observation;
import measuredwalk.reading.quantity.Amount;
import measuredwalk.reading.quantity.BareNumber;
import measuredwalk.reading.quantity.ClockTime;
import measuredwalk.reading.quantity.Quantity;
import measuredwalk.reading.words.Words;

/** '15 tonight' and 'sat at 11' look like hours, but answer how long. */
final class ClockOrMinutes {

	private final Annotation annotation;

	private final Words words;

	private final RoleCues cues;

	private final Question question;

	private final List<Observation> observations;

	ClockOrMinutes(Annotation annotation, RoleCues cues, Question question, List<Observation> observations) {
		this.annotation = annotation;
		this.words = annotation.words();
		this.cues = cues;
		this.question = question;
		this.observations = observations;
	}

	Quantity meant(Quantity quantity, int from, int to) {
		if (!(quantity instanceof ClockTime time) || this.question != Question.WALK
				|| !(time.bare() || isBeforeDayPart(to))) {
			return quantity;
		}
		int at = from;
		while (at < to - 1 && !Character.isDigit(this.words.form(at).charAt(0))) {
			at++;
		}
		String figures = this.words.form(at);
		boolean whole = figures.length() <= 3 && figures.chars().allMatch(Character::isDigit);
		boolean hour = this.cues.before("clock-hour", new Placed(quantity, from, to)) && !isBesideSign(from);
		return (hour || !whole) ? quantity : new BareNumber(quantity.span(), Amount.of(Integer.parseInt(figures)), 1);
	}

	/** '15 tonight', '25 this morning'. */
	private boolean isBeforeDayPart(int to) {
		return this.words.is(to - 1, "tonight") || this.words.is(to - 2, "this");
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

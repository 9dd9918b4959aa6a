package measuredwalk.reading.amount;

import measuredwalk.reading.context.Annotation;
import measuredwalk.reading.lexicon.Category;
import measuredwalk.reading.words.Words;

/**
 * Tells which bare numbers answer the question how long. One does, unless it counts what
 * follows ('12 sheep') or numbers what came before ('route 20', 'she is 12').
 */
final class BareAnswers {

	/** A bare number above this is no minutes of a walk. */
	private static final double MOST_MINUTES = 180;

	/** A bare number below this counts something else. */
	static final double FEWEST_MINUTES = 3;

	/** Shorter words in s are seldom plural nouns: 'was', 'his', 'this'. */
	private static final int SHORTEST_PLURAL = 5;

	private final Annotation annotation;

	private final Words words;

	private final RoleCues cues;

	BareAnswers(Annotation annotation, RoleCues cues) {
		this.annotation = annotation;
		this.words = annotation.words();
		this.cues = cues;
	}

	static boolean mayBeMinutes(double value) {
		return value >= FEWEST_MINUTES && value <= MOST_MINUTES;
	}

	boolean isAnswer(Placed placed) {
		return !this.cues.before("numbered", placed) && !counts(placed) && !isPriceOrTime(placed);
	}

	/** '3.40' and '7.50' alone: minutes are not told to two places. */
	private boolean isPriceOrTime(Placed placed) {
		String form = this.words.form(placed.to() - 1);
		return form.indexOf('.') > 0 && form.length() - form.indexOf('.') == 3;
	}

	boolean isCorrected(Placed placed) {
		return this.words.is(placed.to(), "not") || !this.annotation.mentions(Category.CORRECTION).isEmpty();
	}

	boolean counts(Placed placed) {
		if (this.words.isBreakBefore(placed.to())) {
			return false;
		}
		return this.cues.after("counted", placed)
				|| (isPlural(this.words.form(placed.to())) && !this.cues.after("uncounted", placed));
	}

	private static boolean isPlural(String word) {
		return word.length() >= SHORTEST_PLURAL && word.endsWith("s") && !word.endsWith("ss") && !word.endsWith("ous");
	}

}

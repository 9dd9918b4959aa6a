package measuredwalk.reading.amount;

import java.util.Set;

import measuredwalk.reading.context.Annotation;
import measuredwalk.reading.words.Words;

/** The words around a quantity. */
final class Neighbours {

	private final Annotation annotation;

	private final Words words;

	Neighbours(Annotation annotation) {
		this.annotation = annotation;
		this.words = annotation.words();
	}

	/** Whether one of some words stands just before, over at most so many others. */
	boolean before(Placed placed, Set<String> forms, int reach) {
		for (int at = placed.from() - 1; at >= 0 && at >= placed.from() - 1 - reach; at--) {
			if (this.words.isBreakBefore(at + 1)) {
				return false;
			}
			if (forms.contains(this.words.form(at))) {
				return true;
			}
		}
		return false;
	}

	/** Whether one of some words stands just after, over at most so many others. */
	boolean after(Placed placed, Set<String> forms, int reach) {
		for (int at = placed.to(); at < this.words.size() && at <= placed.to() + reach; at++) {
			if (this.words.isBreakBefore(at)) {
				return false;
			}
			if (forms.contains(this.words.form(at))) {
				return true;
			}
		}
		return false;
	}

	/** Whether one of some words stands in the same clause. */
	boolean inClause(Placed placed, Set<String> forms) {
		int clause = clause(placed);
		for (int at = 0; at < this.words.size(); at++) {
			if (this.annotation.clauses().of(at) == clause && forms.contains(this.words.form(at))) {
				return true;
			}
		}
		return false;
	}

	int clause(Placed placed) {
		return this.annotation.clauses().of(Math.min(placed.from(), this.words.size() - 1));
	}

	int sentence(Placed placed) {
		return this.annotation.clauses().sentenceOf(Math.min(placed.from(), this.words.size() - 1));
	}

	/** Whether nothing but the quantity stands between two breaks. */
	boolean isAlone(Placed placed) {
		return this.words.isBreakBefore(placed.from()) && this.words.isBreakBefore(placed.to());
	}

}

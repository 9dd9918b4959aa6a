package measuredwalk.reading.report;

import java.util.List;
import java.util.function.ToDoubleFunction;

import measuredwalk.reading.score.Scorecard;
import measuredwalk.reading.score.Scorecard.Field;
import measuredwalk.reading.score.Tally;

/**
 * A figure to reach.
 *
 * @param field what it is about
 * @param measure how it is called
 * @param must the floor, from 0 to 1
 * @param aim the goal, from 0 to 1
 * @param of the figure's value
 */
record Goal(Field field, String measure, double must, double aim, ToDoubleFunction<Tally> of) {

	static final List<Goal> ALL = List.of(f1(Field.WALK_MINUTES, 0.95, 0.99), f1(Field.DISTANCE, 0.95, 0.99),
			f1(Field.SIGNS, 0.92, 0.97), f1(Field.DENIED_SIGNS, 0.90, 0.96), recall(Field.SEVERITY, 0.90, 0.96),
			recall(Field.SIDE, 0.90, 0.96), recall(Field.LIMB, 0.90, 0.96), recall(Field.WHEN, 0.90, 0.96),
			recall(Field.ONSET, 0.88, 0.95), recall(Field.URGENT, 1, 1),
			new Goal(Field.URGENT, "precision", 0.85, 0.95, Tally::precision),
			recall(Field.NOT_UNDERSTOOD, 0.90, 0.97));

	private static Goal f1(Field field, double must, double aim) {
		return new Goal(field, "F1", must, aim, Tally::f1);
	}

	private static Goal recall(Field field, double must, double aim) {
		return new Goal(field, "recall", must, aim, Tally::recall);
	}

	/** The value on a set and what it reaches; a dash where nothing is labelled. */
	String reached(Scorecard card) {
		Tally tally = card.tally(this.field);
		if (tally.labels() == 0) {
			return "-";
		}
		double value = this.of.applyAsDouble(tally);
		String mark = (value >= this.aim) ? "" : (value >= this.must) ? " (must)" : " **(below)**";
		return MarkdownTable.percent(value) + mark;
	}

}

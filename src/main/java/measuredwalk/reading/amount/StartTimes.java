package measuredwalk.reading.amount;

import java.time.LocalTime;
import java.util.List;

import measuredwalk.reading.context.Annotation;
import measuredwalk.reading.quantity.ClockTime;
import measuredwalk.reading.words.Words;
import org.jspecify.annotations.Nullable;

/** Finds when walks began: 'went out at 3', '12 minutes at 08:00'. */
final class StartTimes {

	/** Words between the first word of a length and the time of its walk. */
	private static final int MOST_WORDS = 4;

	private final Annotation annotation;

	private final Words words;

	private final RoleCues cues;

	private @Nullable LocalTime only;

	StartTimes(Annotation annotation, RoleCues cues) {
		this.annotation = annotation;
		this.words = annotation.words();
		this.cues = cues;
	}

	/** The time that a message with one walk tells, or null. */
	@Nullable LocalTime only() {
		return this.only;
	}

	void add(Placed placed, ClockTime time, List<WalkDraft> before) {
		boolean ofLast = !time.bare() && !before.isEmpty() && this.words.is(placed.from() - 1, "at")
				&& placed.from() - before.get(before.size() - 1).placed().from() <= MOST_WORDS;
		if (ofLast) {
			before.get(before.size() - 1).start = time.time();
		}
		else if (this.only == null && isStart(time, placed)) {
			this.only = time.time();
		}
	}

	private boolean isStart(ClockTime time, Placed placed) {
		boolean went = this.cues.before("went", placed) || (!time.bare() && isInWalkClause(placed));
		boolean byBare = time.bare() && !this.words.is(placed.from() - 2, "left")
				&& !(this.words.is(placed.from() - 1, "at") && isInWalkClause(placed));
		return went && !byBare;
	}

	private boolean isInWalkClause(Placed placed) {
		int clause = new Neighbours(this.annotation).clause(placed);
		return this.cues.of("walked-then")
			.stream()
			.anyMatch((cue) -> this.annotation.clauses().of(cue.from()) == clause);
	}

}

package measuredwalk.tolerance;

import java.util.ArrayList;
import java.util.List;

import org.jspecify.annotations.Nullable;

/**
 * The days since enrolment. One growing list serves all of a course's days, each of which
 * sees only its own part: copying it every day would cost more than the arithmetic.
 */
final class PastDays {

	private final List<PastDay> days;

	private final int size;

	private PastDays(List<PastDay> days, int size) {
		this.days = days;
		this.size = size;
	}

	static PastDays none() {
		return new PastDays(new ArrayList<>(), 0);
	}

	PastDays with(PastDay day) {
		List<PastDay> list = (this.days.size() == this.size) ? this.days
				: new ArrayList<>(this.days.subList(0, this.size));
		list.add(day);
		return new PastDays(list, this.size + 1);
	}

	/** The same days in a list of their own, which another thread does not add to. */
	PastDays own() {
		return new PastDays(new ArrayList<>(this.days.subList(0, this.size)), this.size);
	}

	int size() {
		return this.size;
	}

	/**
	 * A past day.
	 * @param daysAgo 1 for the last one
	 * @return the day, or null before enrolment
	 */
	@Nullable PastDay day(int daysAgo) {
		int index = this.size - daysAgo;
		return (index >= 0 && daysAgo > 0) ? this.days.get(index) : null;
	}

}

package measuredwalk.tolerance;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

import measuredwalk.signs.Overall;
import measuredwalk.signs.Sign;
import measuredwalk.tolerance.ToleranceEvent.MorningSeen;
import measuredwalk.tolerance.ToleranceEvent.WalkTaken;
import org.jspecify.annotations.Nullable;

/**
 * What was told of one day.
 *
 * @param date the day
 * @param morning the morning, of all that was told of it, or null
 * @param walks the walks, as told
 */
record DayFacts(LocalDate date, @Nullable MorningSeen morning, List<WalkTaken> walks) {

	DayFacts {
		walks = List.copyOf(walks);
	}

	static DayFacts none(LocalDate date) {
		return new DayFacts(date, null, List.of());
	}

	boolean heard() {
		return this.morning != null || !this.walks.isEmpty();
	}

	DayFacts withMorning(MorningSeen told) {
		return new DayFacts(this.date, (this.morning != null) ? merged(this.morning, told) : told, this.walks);
	}

	/** Whether a walk counts for more than its minutes. */
	boolean hasHarderWalk() {
		return this.walks.stream().anyMatch((walk) -> walk.load().isHarder());
	}

	/**
	 * What the day's walks count for beyond their minutes. So much less is left for the
	 * rest of the day (ours, no source).
	 */
	double minutesOfLoad() {
		return this.walks.stream().mapToDouble((walk) -> Math.max(0, walk.load().factor() - 1) * walk.minutes()).sum();
	}

	/** The same with every walk of the usual load. */
	DayFacts withoutLoads() {
		return new DayFacts(this.date, this.morning, this.walks.stream().map(WalkTaken::ofUsualLoad).toList());
	}

	DayFacts withoutMorning() {
		return new DayFacts(this.date, null, this.walks);
	}

	DayFacts withWalk(WalkTaken walk) {
		List<WalkTaken> all = new ArrayList<>(this.walks);
		all.add(walk);
		return new DayFacts(this.date, this.morning, all);
	}

	DayFacts withWalks(List<WalkTaken> others) {
		return new DayFacts(this.date, this.morning, others);
	}

	/** Two carers may both tell of a morning: the worse of each answer counts. */
	private static MorningSeen merged(MorningSeen one, MorningSeen other) {
		List<Sign> signs = new ArrayList<>(one.signs());
		signs.addAll(other.signs());
		return new MorningSeen(one.date(), signs, larger(one.stiffMinutes(), other.stiffMinutes()),
				worse(one.overall(), other.overall()), one.late() && other.late());
	}

	private static @Nullable Double larger(@Nullable Double one, @Nullable Double other) {
		if (one == null || other == null) {
			return (one != null) ? one : other;
		}
		return Math.max(one, other);
	}

	private static @Nullable Overall worse(@Nullable Overall one, @Nullable Overall other) {
		if (one == null || other == null) {
			return (one != null) ? one : other;
		}
		return (one.compareTo(other) > 0) ? one : other;
	}

}

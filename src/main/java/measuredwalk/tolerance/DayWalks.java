package measuredwalk.tolerance;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

import measuredwalk.tolerance.ToleranceEvent.WalkTaken;

/**
 * A day's walks in the order that they were taken, with the load that each began and
 * ended with.
 *
 * @param evidence what each walk says, in order
 * @param before the last walk of the day before
 * @param last what is known of the last walk, for what it carries over
 */
record DayWalks(List<WalkEvidence> evidence, Ended before, Ended last) {

	/** A day of which no walk was told. */
	static final DayWalks NONE = new DayWalks(List.of(), Ended.NEVER, Ended.NEVER);

	/**
	 * The last walk so far.
	 *
	 * @param load load at its end, 0 when there was none
	 * @param minutes the same if no walk had been harder than usual
	 * @param hour when it ended, in hours of its day
	 */
	record Ended(double load, double minutes, double hour) {

		static final Ended NEVER = new Ended(0, 0, 0);

		/** The same seen from the next day. */
		Ended yesterday() {
			return new Ended(this.load, this.minutes, this.hour - 24);
		}

	}

	private static final double FIRST_HOUR = 8;

	DayWalks {
		evidence = List.copyOf(evidence);
	}

	static DayWalks of(List<WalkTaken> walks, Ended before, int walksPlanned, WalkSettings settings) {
		WalkReading reading = new WalkReading(settings);
		CarryOver carryOver = CarryOver.of(settings);
		List<WalkEvidence> evidence = new ArrayList<>();
		Ended last = before;
		for (Started started : ordered(walks, walksPlanned, settings)) {
			WalkTaken walk = started.walk();
			double left = carryOver.left(started.hour() - last.hour());
			double carried = left * last.load();
			double plain = left * last.minutes();
			evidence.add(reading.read(walk, carried, plain));
			last = new Ended(carried + walk.load().factor() * walk.minutes(), plain + walk.minutes(),
					started.hour() + walk.minutes() / 60);
		}
		return new DayWalks(evidence, before, last);
	}

	/**
	 * The same with clean walks counted for no more than a load. What is clean far beyond
	 * the dose only excludes what lies between, which would lower the next dose below
	 * that after a shorter clean walk.
	 * @param most the most load that a clean walk counts for
	 */
	DayWalks cleanUpTo(double most) {
		if (!hasCleanOver(most)) {
			return this;
		}
		List<WalkEvidence> capped = new ArrayList<>();
		for (WalkEvidence walk : this.evidence) {
			capped.add((walk.hasSigns() || walk.total() <= most) ? walk : WalkEvidence.clean(most, walk.late()));
		}
		return new DayWalks(capped, this.before, this.last);
	}

	private boolean hasCleanOver(double most) {
		for (WalkEvidence walk : this.evidence) {
			if (!walk.hasSigns() && walk.total() > most) {
				return true;
			}
		}
		return false;
	}

	/**
	 * The greatest load that the dog had at any time of the day, 0 when none is known;
	 * clean walks by their plain minutes.
	 */
	double load() {
		double greatest = 0;
		for (WalkEvidence walk : this.evidence) {
			greatest = Math.max(greatest, walk.total());
		}
		return greatest;
	}

	/**
	 * The load that may bring on a flare. A clean walk is not held against the dog: else
	 * a longer clean walk could lower tomorrow's.
	 */
	double overload() {
		return hasSigns() ? load() : 0;
	}

	boolean hasSigns() {
		for (WalkEvidence walk : this.evidence) {
			if (walk.hasSigns()) {
				return true;
			}
		}
		return false;
	}

	/** Hours between the starts of two walks when no times are told. */
	static double usualGap(int walksPlanned, WalkSettings settings) {
		return settings.walkingDay() / Math.max(1, walksPlanned - 1);
	}

	private static List<Started> ordered(List<WalkTaken> walks, int walksPlanned, WalkSettings settings) {
		List<Started> started = new ArrayList<>();
		for (int i = 0; i < walks.size(); i++) {
			WalkTaken walk = walks.get(i);
			double hour = (walk.time() != null) ? walk.time().toSecondOfDay() / 3600.0
					: FIRST_HOUR + i * usualGap(walksPlanned, settings);
			started.add(new Started(hour, walk));
		}
		started.sort(Comparator.comparingDouble(Started::hour).thenComparing((one) -> one.walk().minutes()));
		return started;
	}

	private record Started(double hour, WalkTaken walk) {
	}

}

package measuredwalk.tolerance;

import java.util.Arrays;

import measuredwalk.tolerance.filter.DoseRule;
import measuredwalk.tolerance.filter.GridLaw;
import measuredwalk.tolerance.filter.NormalCurve;

/**
 * Chooses the minutes of each of a day's equal walks from the law of today's tolerance.
 */
final class Dosing {

	private static final int MOST_WALKS = 8;

	private static final double LONGEST = 240;

	private final ToleranceSettings settings;

	private final TroubleCurve[] curves = new TroubleCurve[MOST_WALKS + 1];

	Dosing(ToleranceSettings settings) {
		this.settings = settings;
		for (int walks = 1; walks <= MOST_WALKS; walks++) {
			this.curves[walks] = new TroubleCurve(multiples(walks), settings.walking().onsetDeviation(),
					Axes.step(settings));
		}
	}

	/** Loads of a day's equal walks as multiples of their minutes, day after day. */
	private double[] multiples(int walks) {
		CarryOver carryOver = CarryOver.of(this.settings.walking());
		double byDay = carryOver.left(DayWalks.usualGap(walks, this.settings.walking()));
		double overnight = carryOver.left(24 - ((walks > 1) ? this.settings.walking().walkingDay() : 0));
		double[] multiples = new double[walks];
		double last = 1;
		for (int walk = 0; walk < walks; walk++) {
			multiples[walk] = 1 + last * ((walk == 0) ? overnight : byDay);
			last = multiples[walk];
		}
		return multiples;
	}

	/**
	 * The largest dose for a whole day.
	 * @param today the law of the log of today's tolerance
	 * @param walks number of equal walks
	 * @param allowed the largest chance of trouble
	 * @return minutes of each walk
	 */
	double forWholeDay(GridLaw today, int walks, double allowed) {
		return Math.min(LONGEST, Math.exp(this.curves[Math.min(MOST_WALKS, walks)].largest(today, allowed)));
	}

	/**
	 * The largest dose for what is left of a day.
	 * @param today the law of the log of today's tolerance, after the walks so far
	 * @param before the last walk
	 * @param walks number of equal walks left
	 * @param gap hours until and between them
	 * @param allowed the largest chance of trouble
	 * @return minutes of each walk
	 */
	double forRest(GridLaw today, DayWalks.Ended before, int walks, double gap, double allowed) {
		return DoseRule.largestWithin(allowed, (minutes) -> troubleInRest(today, before, walks, gap, minutes), 1,
				LONGEST);
	}

	private double troubleInRest(GridLaw today, DayWalks.Ended before, int walks, double gap, double minutes) {
		double left = CarryOver.of(this.settings.walking()).left(gap);
		double[] clean = new double[today.grid().size()];
		Arrays.fill(clean, 1);
		double load = before.load();
		for (int walk = 0; walk < walks; walk++) {
			load = minutes + load * left;
			for (int i = 0; i < clean.length; i++) {
				clean[i] *= NormalCurve
					.below((today.grid().at(i) - Math.log(load)) / this.settings.walking().onsetDeviation());
			}
		}
		return 1 - today.expect(clean);
	}

}

package measuredwalk.tolerance;

import measuredwalk.tolerance.filter.GridLaw;

/**
 * What-if answers for one day: the chance that a walk of any length passes today's
 * tolerance.
 */
public final class Chances {

	private final GridLaw today;

	private final double carried;

	Chances(GridLaw today, double carried) {
		this.today = today;
		this.carried = carried;
	}

	/**
	 * The chance that one walk passes the tolerance, what earlier walks of the day left
	 * behind included.
	 * @param minutes its length, above 0
	 * @return the chance, in [0, 1]; it never falls with the minutes
	 * @throws IllegalArgumentException when the minutes are not above 0
	 */
	public double ofTrouble(double minutes) {
		if (!(minutes > 0)) {
			throw new IllegalArgumentException("minutes must be above 0, not " + minutes);
		}
		return this.today.below(Math.log(minutes + this.carried));
	}

	/**
	 * The longest walk with at most such a chance.
	 * @param chance the chance, in (0, 1)
	 * @return minutes, at least 0
	 */
	public double longest(double chance) {
		return Math.max(0, Math.exp(this.today.quantile(chance)) - this.carried);
	}

	/**
	 * Minutes that earlier walks of the day still count for, at the time of the next.
	 * @return minutes, at least 0
	 */
	public double carriedMinutes() {
		return this.carried;
	}

}

package measuredwalk.tolerance;

/**
 * Which dose is chosen from the belief.
 *
 * @param trouble largest chance that any of a day's walks passes the tolerance, in (0,
 * 1); 0.10 to 0.30. One minute too many costing as much as three too few puts the best
 * quantile at 1/4 of the day's tolerance, which is 0.15 to 0.20 of the fresh one (a value
 * judgement)
 * @param troubleWhenNew the same for a new dog
 * @param newDays days that a dog counts as new
 */
public record DoseSettings(double trouble, double troubleWhenNew, int newDays) {

	static DoseSettings of(DosingSettings chosen) {
		return new DoseSettings(chosen.value(DosingSetting.TROUBLE), chosen.value(DosingSetting.TROUBLE_WHEN_NEW),
				chosen.whole(DosingSetting.NEW_DAYS));
	}

}

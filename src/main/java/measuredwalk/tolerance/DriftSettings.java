package measuredwalk.tolerance;

/**
 * How the log of the tolerance moves from day to day.
 *
 * @param dailyDeviation standard deviation of the ordinary daily step of log tolerance
 * (S)
 * @param dropChance chance a day of a sudden drop (S; about four a year)
 * @param dropMean mean of such a drop in log tolerance (S: a quarter)
 * @param dropDeviation standard deviation of the drop (S)
 * @param afterMedicineDeviation the daily step's standard deviation for some days after a
 * medicine change, which is a break point (C)
 * @param afterMedicineDays how many days that lasts (C)
 * @param widest with no news the belief stops widening at this standard deviation of log
 * tolerance: silence is no reason to know less than at the start (S)
 * @param priorFactor the fresh median of tolerance as a multiple of the plan's minutes,
 * before anything is known (S)
 * @param priorDeviation its standard deviation in log (S)
 * @param priorFlare chance that the dog is enrolled in a flare (S)
 */
public record DriftSettings(double dailyDeviation, double dropChance, double dropMean, double dropDeviation,
		double afterMedicineDeviation, int afterMedicineDays, double widest, double priorFactor, double priorDeviation,
		double priorFlare) {

	static DriftSettings standard() {
		return new DriftSettings(0.025, 0.007, -0.25, 0.20, 0.05, 14, 0.55, 1.35 * Math.exp(0.20), 0.45, 0.08);
	}

}

package measuredwalk.tolerance;

/**
 * How a walk meets the tolerance.
 *
 * @param dayDeviation standard deviation of the day's own luck in log tolerance, shared
 * by all walks of a day and the next morning (S)
 * @param onsetDeviation standard deviation of the log minute at which a sign shows, for a
 * tolerance that is known (S)
 * @param onsetWindow minutes before the told onset in which the sign may have begun (C)
 * @param carryOver share of a walk's load that is left at once after it (S)
 * @param carryOverHalving hours in which what is left halves (S)
 * @param walkingDay hours over which a day's walks are spread when no times are told (C)
 */
public record WalkSettings(double dayDeviation, double onsetDeviation, double onsetWindow, double carryOver,
		double carryOverHalving, double walkingDay) {

	static WalkSettings standard() {
		return new WalkSettings(0.15, 0.08, 4, 0.15, 4, 10);
	}

}

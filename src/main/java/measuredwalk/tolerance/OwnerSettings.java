package measuredwalk.tolerance;

/**
 * How owners and dogs show and tell. A few fixed classes stand for the two habits that
 * cannot be learned finely from one dog: how often trouble is seen, and how often a mild
 * sign is told without trouble.
 *
 * @param seen chances that trouble is seen and told (S)
 * @param seenPrior how common each is (S)
 * @param mildFalseAlarms chances that a mild sign is told without trouble (S)
 * @param mildFalseAlarmsPrior how common each is (S)
 * @param clearFalseAlarm the same for clear lameness, whoever tells it (S)
 * @param severeFalseAlarm the same for a dog that refused or was carried (S)
 * @param latePower power that weakens what was told more than a day late: paper diaries
 * are kept late and badly (Stone 2003; H)
 */
@SuppressWarnings("ArrayRecordComponent")
public record OwnerSettings(double[] seen, double[] seenPrior, double[] mildFalseAlarms, double[] mildFalseAlarmsPrior,
		double clearFalseAlarm, double severeFalseAlarm, double latePower) {

	static OwnerSettings standard() {
		return new OwnerSettings(new double[] { 0.15, 0.45, 0.75 }, new double[] { 0.20, 0.45, 0.35 },
				new double[] { 0.03, 0.12 }, new double[] { 0.5, 0.5 }, 0.005, 0.0005, 0.5);
	}

	int classes() {
		return this.seen.length * this.mildFalseAlarms.length;
	}

	double seen(int ownerClass) {
		return this.seen[ownerClass / this.mildFalseAlarms.length];
	}

	double mildFalseAlarm(int ownerClass) {
		return this.mildFalseAlarms[ownerClass % this.mildFalseAlarms.length];
	}

	double prior(int ownerClass) {
		return this.seenPrior[ownerClass / this.mildFalseAlarms.length]
				* this.mildFalseAlarmsPrior[ownerClass % this.mildFalseAlarms.length];
	}

}

package measuredwalk.tolerance.simulation;

/**
 * How an owner keeps to a suggestion.
 *
 * @param stretch log of how much longer than asked on the whole
 * @param scatter standard deviation of that from walk to walk, in logs
 * @param weekend factor on walks of Saturdays and Sundays
 * @param turnsBack chance of turning back on noticing a sign
 * @param skips chance of leaving out a walk
 */
record Keeping(double stretch, double scatter, double weekend, double turnsBack, double skips) {
}

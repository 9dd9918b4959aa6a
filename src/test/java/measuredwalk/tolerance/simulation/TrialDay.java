package measuredwalk.tolerance.simulation;

/**
 * One day of a trial: what was suggested and what was true.
 *
 * @param day number of the day since the dog was taken on
 * @param dose what was suggested
 * @param tolerance today's tolerance in one walk, in minutes, luck and yesterday's
 * fatigue included
 * @param limit the most minutes of each of that many equal walks of which none passes it
 * @param middleLimit that limit in the middle of today's luck
 * @param bestSafe the best safe dose for that many walks
 */
record TrialDay(int day, Dose dose, double tolerance, double limit, double middleLimit, double bestSafe) {
}

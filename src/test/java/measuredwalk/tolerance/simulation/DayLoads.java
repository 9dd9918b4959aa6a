package measuredwalk.tolerance.simulation;

/**
 * What the walks of a day came to.
 *
 * @param ratio the greatest load over the day's tolerance; 0 when there was no walk
 * @param lastLoad load of the last walk with what was carried into it, in minutes
 * @param lastHour hour at which that was
 */
record DayLoads(double ratio, double lastLoad, double lastHour) {
}

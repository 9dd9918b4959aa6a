package measuredwalk.tolerance.simulation;

/**
 * How an owner tells of it.
 *
 * @param minute chance of telling at which minute a sign was seen
 * @param misread chance that an amount is told or read wrongly
 * @param late chance of an answer that comes two days late
 */
record Telling(double minute, double misread, double late) {
}

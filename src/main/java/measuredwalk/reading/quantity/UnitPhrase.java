package measuredwalk.reading.quantity;

/**
 * A unit that was read.
 *
 * @param unit the unit
 * @param end index behind its last token
 */
record UnitPhrase(Unit unit, int end) {
}

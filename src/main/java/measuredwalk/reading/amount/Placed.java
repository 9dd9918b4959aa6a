package measuredwalk.reading.amount;

import measuredwalk.reading.quantity.Quantity;

/**
 * A quantity with its place among the words.
 *
 * @param quantity the quantity
 * @param from index of its first word
 * @param to index after its last word
 */
record Placed(Quantity quantity, int from, int to) {
}

/** Walks in a message: what part each number plays, and the walks these make. */
@org.jspecify.annotations.NullMarked
package measuredwalk.reading.amount;

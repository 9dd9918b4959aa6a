/**
 * Amounts, times and numbers in owners' words: a small grammar over tokens, driven by
 * lexicon files, linear in the length of the text. It says what a number is (minutes,
 * kilometres, a price, a dose, a date), never what it means for a walk.
 */
@org.springframework.modulith.NamedInterface("quantity")
@org.jspecify.annotations.NullMarked
package measuredwalk.reading.quantity;

/**
 * Words as people type them on a phone, made comparable: short forms written out, unknown
 * words repaired, numbers and denials left as they are.
 */
@org.jspecify.annotations.NullMarked
package measuredwalk.reading.words;

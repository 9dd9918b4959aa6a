/**
 * Phrases and what they mean: lexicon files that a nurse can add to, checked at load, and
 * the trie that finds all of them in one pass over a message.
 */
@org.jspecify.annotations.NullMarked
package measuredwalk.reading.lexicon;

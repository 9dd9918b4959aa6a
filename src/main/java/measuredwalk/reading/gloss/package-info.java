/**
 * Other languages, by files alone: a glossary turns a message into the English that the
 * rules know, phrase by phrase, so that amounts, denials and the emergency screen need no
 * second set of rules.
 */
@org.jspecify.annotations.NullMarked
package measuredwalk.reading.gloss;

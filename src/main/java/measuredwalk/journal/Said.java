package measuredwalk.journal;

import java.time.Instant;

/**
 * Words that somebody wrote, as they were written.
 *
 * @param text the words
 * @param at when they came in
 * @param by who wrote them
 */
public record Said(String text, Instant at, String by) {
}

package measuredwalk.escalation;

import java.time.Instant;

/**
 * An owner's words that an alert rests on.
 *
 * @param said the words as they were written
 * @param at when they came in
 * @param by who wrote them
 */
public record Evidence(String said, Instant at, String by) {
}

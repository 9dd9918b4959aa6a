package measuredwalk.escalation;

import measuredwalk.signs.Basis;

/**
 * A rule about what the clinic hears of and when, to be shown to those who answer for it.
 *
 * @param name a stable name, lower-case words joined by hyphens
 * @param fits when it fits, or what it does, in words
 * @param basis what it rests on
 */
public record EscalationRule(String name, String fits, Basis basis) {
}

package measuredwalk.suggestions;

import java.time.Instant;

/**
 * What a clinic has set a number of the dosing rule to.
 *
 * @param amount the amount, in the setting's unit
 * @param by who set it
 * @param at when
 */
public record ChosenAmount(double amount, String by, Instant at) {
}

package measuredwalk.suggestions;

/**
 * The clinic has changed a number of the dosing rule, so that what was worked out before
 * is out of date.
 *
 * @param setting the code of the setting
 */
public record DosingRuleChanged(String setting) {
}

package measuredwalk.escalation;

/**
 * How owners reach the clinic.
 *
 * @param phone the number to call in opening hours, or empty when none was set
 * @param outOfHoursPhone the number to call at other times, or empty for the same number
 */
public record ClinicContact(String phone, String outOfHoursPhone) {
}

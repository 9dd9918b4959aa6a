package measuredwalk.escalation;

import org.jspecify.annotations.Nullable;
import org.springframework.boot.context.properties.ConfigurationProperties;

/**
 * How owners reach the clinic.
 *
 * @param phone the number to call in opening hours, or null when none was set
 * @param outOfHoursPhone the number to call at other times, or null for the same number
 */
@ConfigurationProperties("measuredwalk.clinic")
public record ClinicContact(@Nullable String phone, @Nullable String outOfHoursPhone) {
}

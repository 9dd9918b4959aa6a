package measuredwalk.household;

import java.time.LocalTime;
import java.time.ZoneId;
import java.util.UUID;

/**
 * The people who share the log of a dog or of several.
 *
 * @param id its number
 * @param timeZone the zone that its days are counted in
 * @param morningAt when the morning check-in is asked, in that zone
 */
public record Household(UUID id, ZoneId timeZone, LocalTime morningAt) {
}

package measuredwalk.clinic.access;

import java.time.Instant;

/**
 * An account of a member of staff.
 *
 * @param username the name to log in by
 * @param role what it may do
 * @param active false when it was switched off
 * @param madeAt when it was made
 */
public record StaffAccount(String username, StaffRole role, boolean active, Instant madeAt) {
}

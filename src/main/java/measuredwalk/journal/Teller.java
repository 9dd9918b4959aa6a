package measuredwalk.journal;

import java.util.UUID;

/**
 * The person who tells.
 *
 * @param carerId the carer's number
 * @param name what the others call this person
 */
public record Teller(UUID carerId, String name) {
}

package measuredwalk.household;

import java.util.UUID;

/**
 * A dog was taken on into a household that was known already.
 *
 * @param dogId the dog
 */
public record DogCameToHousehold(UUID dogId) {
}

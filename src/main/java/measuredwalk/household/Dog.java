package measuredwalk.household;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.UUID;

import org.jspecify.annotations.Nullable;

/**
 * A dog as it is known now.
 *
 * @param id its number
 * @param household the people who look after it
 * @param name what it is called
 * @param weightKg weight in kilograms, or null
 * @param ageYears age in years at enrolment, or null
 * @param fullyGrown false while it still grows
 * @param surgeryDate the day of its last surgery, or null
 * @param plan the plan that holds now
 * @param walkTimes usual times of its walks, in the household's zone
 * @param walkTimesTold true when the household named these times itself
 * @param medications kinds of medicine that it gets now, such as {@code nsaid}
 * @param enrolledOn the day it was taken on, in the household's zone
 * @param enrolledAt the moment it was taken on
 * @param version number of changes to it, for telling a stale copy
 */
public record Dog(UUID id, Household household, String name, @Nullable Double weightKg, @Nullable Double ageYears,
		boolean fullyGrown, @Nullable LocalDate surgeryDate, Plan plan, List<LocalTime> walkTimes,
		boolean walkTimesTold, List<String> medications, LocalDate enrolledOn, Instant enrolledAt, long version) {

	public Dog {
		walkTimes = List.copyOf(walkTimes);
		medications = List.copyOf(medications);
	}

}
